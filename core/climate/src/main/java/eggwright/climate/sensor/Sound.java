package eggwright.climate.sensor;

import eggwright.climate.reading.Quantity;
import eggwright.units.OutOfRange;

/**
 * What of a quantity can be. In standard units (°C, %, hPa).
 *
 * @param least a sensor in good order reads nothing below in any room of a hatchery
 * @param most nor above
 * @param jump more than this between two readings at most {@link #JUMP_MILLIS} apart is no machine, but a sensor, or one
 *     that was taken out
 */
public record Sound(double least, double most, double jump) {
    /** Ten minutes: ours. A setter of eggs takes hours to fall by the twenty degrees of a jump. */
    public static final long JUMP_MILLIS = 600_000;

    /** So many readings together at the new place, and the jump is believed from there on: ours. */
    public static final int BELIEVED_AFTER = 5;

    public Sound {
        if (!(least < most && jump > 0)) {
            throw new OutOfRange("Sound readings from " + least + " to " + most + " with jumps of " + jump);
        }
    }

    /**
     * What is taken for sound. Ours, wide on purpose: common sensors of hatcheries read -40 to 125 °C and 0 to 100 %, and
     * no air at which people keep birds is outside the rest.
     */
    public static Sound of(Quantity quantity) {
        return switch (quantity) {
            case AIR_TEMPERATURE, WET_BULB, EGG_TEMPERATURE -> new Sound(-30, 70, 20);
            case HUMIDITY -> new Sound(0, 100, 70);
            case PRESSURE -> new Sound(500, 1100, 30);
        };
    }
}
