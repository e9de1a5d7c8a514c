/** Readings that come by way of an MQTT broker. */
@NullMarked
package eggwright.intake.mqtt;

import org.jspecify.annotations.NullMarked;
