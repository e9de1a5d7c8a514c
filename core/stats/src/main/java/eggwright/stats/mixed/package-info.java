/** Counts of yes in so many, explained by what is fixed and by groups that scatter: the binomial mixed model. */
@NullMarked
package eggwright.stats.mixed;

import org.jspecify.annotations.NullMarked;
