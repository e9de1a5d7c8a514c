/** On which day embryos died, told from break-out classes that are ranges of days. */
@NullMarked
package eggwright.stats.deathcurve;

import org.jspecify.annotations.NullMarked;
