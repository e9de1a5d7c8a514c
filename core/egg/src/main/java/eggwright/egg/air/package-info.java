/** Moist air: vapour pressure, dew point, wet bulb, absolute humidity, the standard atmosphere, and when an egg sweats. */
@NullMarked
package eggwright.egg.air;

import org.jspecify.annotations.NullMarked;
