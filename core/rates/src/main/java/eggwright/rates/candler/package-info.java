/** What opened eggs tell of each person at the lamp: clears that were none, clears that were missed, and their cost. */
@NullMarked
package eggwright.rates.candler;

import org.jspecify.annotations.NullMarked;
