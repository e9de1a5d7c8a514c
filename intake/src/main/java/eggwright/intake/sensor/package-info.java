/** Sensors with a token of their own: added, known by it, revoked. */
@NullMarked
package eggwright.intake.sensor;

import org.jspecify.annotations.NullMarked;
