/** What the trade knows of each species: profiles, dates, stages of death, each value with its source. */
@NullMarked
package eggwright.trade;

import org.jspecify.annotations.NullMarked;
