/** How often past forecasts held. */
@NullMarked
package eggwright.forecast.record;

import org.jspecify.annotations.NullMarked;
