/** Readings by minute, hour and day: least, mean, greatest, and how long outside the band. */
@NullMarked
package eggwright.climate.rollup;

import org.jspecify.annotations.NullMarked;
