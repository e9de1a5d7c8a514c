package eggwright.cli.farm;

import eggwright.book.name.MachineName;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.SensorName;
import eggwright.invented.DemoSeason;
import java.time.Instant;

/** Puts into a store what the loggers of the invented farm wrote. */
final class DemoReadings {
    private DemoReadings() {}

    static void bringIn(ReadingStore readings, Instant now) {
        try (var load = readings.load()) {
            DemoSeason.readings(now, (machine, at, fahrenheit, humidity) -> {
                var place = new ReadingPlace.InMachine(new MachineName(machine));
                load.add(
                        new Channel(place, SensorName.ONLY, Quantity.AIR_TEMPERATURE, ReadingUnit.FAHRENHEIT),
                        at,
                        fahrenheit);
                load.add(new Channel(place, SensorName.ONLY, Quantity.HUMIDITY, ReadingUnit.PERCENT), at, humidity);
            });
            DemoSeason.eggRoom(
                    now,
                    (sensor, at, fahrenheit) -> load.add(
                            new Channel(
                                    new ReadingPlace.EggRoom(),
                                    new SensorName(sensor),
                                    Quantity.AIR_TEMPERATURE,
                                    ReadingUnit.FAHRENHEIT),
                            at,
                            fahrenheit));
            load.keep();
        }
    }
}
