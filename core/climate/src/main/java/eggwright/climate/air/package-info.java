/** What air a machine had, hour by hour: read by sensors, read by hand, or taken for granted. */
@NullMarked
package eggwright.climate.air;

import org.jspecify.annotations.NullMarked;
