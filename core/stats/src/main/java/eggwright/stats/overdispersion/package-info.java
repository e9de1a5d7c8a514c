/** How far groups scatter beyond luck, and what a farm's own groups teach about the next. */
@NullMarked
package eggwright.stats.overdispersion;

import org.jspecify.annotations.NullMarked;
