/** Tables of a book for spreadsheets and other programs: which there are, and their rows. */
@NullMarked
package eggwright.cli.export;

import org.jspecify.annotations.NullMarked;
