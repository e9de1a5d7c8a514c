/** How many of the gathered eggs were not fit to be set. */
@NullMarked
package eggwright.rates.eggroom;

import org.jspecify.annotations.NullMarked;
