/** Whether a sensor can be believed: impossible, stuck, drifting; and what it is corrected by. */
@NullMarked
package eggwright.climate.sensor;

import org.jspecify.annotations.NullMarked;
