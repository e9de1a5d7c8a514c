/** CSV files that a person names on the command line, read with every slip named by file, row and column. */
@NullMarked
package eggwright.cli.csv;

import org.jspecify.annotations.NullMarked;
