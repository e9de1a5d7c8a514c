/** Rates one after another: which of them are more than luck away from what is normal. */
@NullMarked
package eggwright.stats.chart;

import org.jspecify.annotations.NullMarked;
