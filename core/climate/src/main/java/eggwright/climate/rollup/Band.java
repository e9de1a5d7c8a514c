package eggwright.climate.rollup;

import eggwright.units.OutOfRange;

/**
 * Between which readings a machine is as it should be; both ends belong to it. In standard units: °C, %, hPa.
 */
public record Band(double low, double high) {
    public Band {
        if (!(low <= high)) {
            throw new OutOfRange("A band from " + low + " to " + high + " has its ends the wrong way round");
        }
    }

    public boolean holds(double value) {
        return value >= low && value <= high;
    }
}
