/** Fertility, hatch and losses by anything, never split below the grain at which they were counted. */
@NullMarked
package eggwright.rates;

import org.jspecify.annotations.NullMarked;
