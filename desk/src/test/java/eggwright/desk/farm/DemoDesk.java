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
import eggwright.desk.Reach;
import eggwright.desk.joining.Devices;
import eggwright.desk.joining.DevicesInMemory;
import eggwright.desk.machine.MemoryReadings;
import eggwright.intake.Incoming;
import eggwright.invented.DemoSeason;
import eggwright.testkit.contracts.MemoryBuyerStore;
import eggwright.testkit.contracts.MemoryEntryStore;
import eggwright.wire.EntryCodec;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Optional;
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
        return open(readings, Optional.empty());
    }

    /** The same farm, with ways of its own by which readings come in. */
    public static Desk open(ReadingStore readings, Optional<Incoming> incoming) {
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
                new FarmDesk.Company(
                        new Devices(new DevicesInMemory(), InstantSource.fixed(NOON), new SplittableRandom(2)),
                        new Reach.ThisMachine(),
                        picture -> {},
                        incoming)));
    }

    /** What the loggers in its machines wrote until noon. */
    public static MemoryReadings readings() {
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
