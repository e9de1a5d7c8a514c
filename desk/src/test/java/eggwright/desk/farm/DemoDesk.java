package eggwright.desk.farm;

import eggwright.book.fold.Ledger;
import eggwright.book.name.MachineName;
import eggwright.book.picture.Picture;
import eggwright.book.store.Offered;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.SensorName;
import eggwright.desk.Desk;
import eggwright.desk.machine.MemoryReadings;
import eggwright.invented.DemoSeason;
import eggwright.testkit.contracts.MemoryBuyerStore;
import eggwright.testkit.contracts.MemoryEntryStore;
import eggwright.wire.EntryCodec;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.SplittableRandom;

/** The desk of the invented farm on one fixed day in mid-season. */
public final class DemoDesk {
    public static final ZoneId ZONE = ZoneId.of("America/Chicago");
    public static final Instant NOON = Instant.parse("2027-05-12T17:00:00Z");

    private DemoDesk() {}

    public static Desk open() {
        return open(readings());
    }

    /** The same farm with other readings, or none. */
    public static Desk open(ReadingStore readings) {
        var season = DemoSeason.of(NOON, ZONE);
        var store = new MemoryEntryStore(season.farm());
        for (var kept : season.entries()) {
            store.append(
                    new Offered(kept.entry(), EntryCodec.write(kept.entry()), kept.clockOffset()), kept.received());
        }
        return Desk.open(FarmDesk.setup(
                store,
                new MemoryBuyerStore(),
                readings,
                EntryCodec::write,
                EntryCodec::version,
                InstantSource.fixed(NOON),
                new SplittableRandom(1),
                ZONE,
                0,
                FarmDesk.alone(InstantSource.fixed(NOON), new SplittableRandom(2))));
    }

    /** What the loggers in its machines wrote until noon. */
    private static ReadingStore readings() {
        var readings = new MemoryReadings();
        try (var load = readings.load()) {
            DemoSeason.readings(NOON, (machine, at, fahrenheit, humidity) -> {
                var place = new ReadingPlace.InMachine(new MachineName(machine));
                load.add(
                        new Channel(place, SensorName.ONLY, Quantity.AIR_TEMPERATURE, ReadingUnit.FAHRENHEIT),
                        at,
                        fahrenheit);
                load.add(new Channel(place, SensorName.ONLY, Quantity.HUMIDITY, ReadingUnit.PERCENT), at, humidity);
            });
            DemoSeason.eggRoom(
                    NOON,
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
        return readings;
    }

    public static Picture picture() {
        return Ledger.of(DemoSeason.of(NOON, ZONE).entries()).picture();
    }
}
