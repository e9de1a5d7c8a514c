/** The pocket calculator: each formula and statistic on its own, from typed values or over a file of rows. */
@NullMarked
package eggwright.cli.calc;

import org.jspecify.annotations.NullMarked;
