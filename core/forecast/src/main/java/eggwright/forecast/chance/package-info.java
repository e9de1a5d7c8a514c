/** What a forecast is worked out with: normals of several quantities, a grid, the scale of luck, whole counts, draws drawn again. */
@NullMarked
package eggwright.forecast.chance;

import org.jspecify.annotations.NullMarked;
