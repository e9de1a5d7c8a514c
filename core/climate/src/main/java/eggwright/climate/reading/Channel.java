package eggwright.climate.reading;

import eggwright.units.OutOfRange;

/** One line of readings: one quantity of one sensor in one place, in the unit that the sensor writes. */
public record Channel(ReadingPlace place, SensorName sensor, Quantity quantity, ReadingUnit unit) {
    public Channel {
        if (!ReadingUnit.of(quantity).contains(unit)) {
            throw new OutOfRange(quantity.word() + " is not measured in " + unit.sign());
        }
    }
}
