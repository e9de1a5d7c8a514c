/** How well a stage goes on this farm, how that drifts, and how sets and trays scatter about it. */
@NullMarked
package eggwright.forecast.level;

import org.jspecify.annotations.NullMarked;
