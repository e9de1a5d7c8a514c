/** Distributions that know nothing of farms: normals of several quantities, a grid, a scale, whole counts, and draws drawn again. */
@NullMarked
package eggwright.forecast.chance;

import org.jspecify.annotations.NullMarked;
