/** Distributions over whole counts: how many of so many eggs. */
@NullMarked
package eggwright.stats.predictive;

import org.jspecify.annotations.NullMarked;
