package eggwright.climate.care;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.ClimateNoted;
import eggwright.book.entry.Entry;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Origin;
import eggwright.book.entry.Payload;
import eggwright.book.entry.SensorCompared;
import eggwright.book.entry.SensorTrust;
import eggwright.book.entry.SensorTrustChanged;
import eggwright.book.fold.Ledger;
import eggwright.book.name.DeviceName;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.name.MachineName;
import eggwright.book.name.PersonName;
import eggwright.book.picture.Picture;
import eggwright.climate.air.NotedCare;
import eggwright.climate.air.Surroundings;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.MemoryReadings;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.SensorName;
import eggwright.climate.sensor.Doubt;
import eggwright.climate.sensor.Drift;
import eggwright.climate.sensor.Stuck;
import eggwright.egg.air.Ventilation;
import eggwright.invented.DemoSeason;
import eggwright.units.Amount;
import eggwright.units.Pressure;
import eggwright.units.Temperature;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The sensors of the invented farm: two loggers in good order, and a pair in the egg room of which one drifts. */
class PlaceSensorsTest {
    private static final Instant NOON = Instant.parse("2027-05-12T17:00:00Z");
    private static final MemoryReadings STORE = new MemoryReadings();
    private static final ReadingPlace EGG_ROOM = new ReadingPlace.EggRoom();
    private static Picture picture = new Ledger().picture();

    @BeforeAll
    static void readTheInventedFarm() {
        picture = Ledger.of(DemoSeason.of(NOON, ZoneId.of("America/Chicago")).entries())
                .picture();
        try (var load = STORE.load()) {
            DemoSeason.readings(NOON, (machine, at, fahrenheit, humidity) -> {
                load.add(channel(machine, "logger", Quantity.AIR_TEMPERATURE), at, fahrenheit);
                load.add(channel(machine, "logger", Quantity.HUMIDITY), at, humidity);
            });
            DemoSeason.eggRoom(NOON, (sensor, at, fahrenheit) -> load.add(eggRoom(sensor), at, fahrenheit));
            load.keep();
        }
    }

    private static Channel channel(String machine, String sensor, Quantity quantity) {
        return new Channel(
                in(machine),
                new SensorName(sensor),
                quantity,
                quantity == Quantity.HUMIDITY ? ReadingUnit.PERCENT : ReadingUnit.FAHRENHEIT);
    }

    private static ReadingPlace in(String machine) {
        return new ReadingPlace.InMachine(new MachineName(machine));
    }

    private static List<SensorNow> sensors(String machine, Instant now) {
        return sensors(in(machine), now);
    }

    private static List<SensorNow> sensors(ReadingPlace place, Instant now) {
        return new PlaceSensors(STORE, picture, new Surroundings(Pressure.SEA_LEVEL, Ventilation.ASPIRATED))
                .of(place, now.minus(PlaceSensors.LOOKED_BACK), now);
    }

    @Test
    void sensorsInGoodOrder_areLeftAlone_onEveryDayOfTheSeason() {
        for (int days = 0; days < 40; days++) {
            for (var sensor : sensors("Setter", NOON.minus(Duration.ofDays(days)))) {
                assertEquals(List.of(), sensor.findings(), days + " days before");
            }
        }
    }

    @Test
    void loosePlug_isOneStretch_ofTwoReadings() {
        var air = sensors("Setter", NOON).getFirst();
        assertEquals(
                List.of(new HeldStretch(
                        Doubt.IMPOSSIBLE,
                        NOON.minus(Duration.ofDays(1)),
                        NOON.minus(Duration.ofDays(1)).plusSeconds(60),
                        2,
                        185,
                        185)),
                air.held());
        assertEquals(Optional.empty(), air.correction());
        assertTrue(air.byHand().isPresent());
    }

    @Test
    void probeThatDrifts_isFound_againstItsTwin_onceItHasLeftTheTolerance() {
        var pair = sensors(EGG_ROOM, NOON);
        var fromShelf = twin(pair, "by the door");
        assertEquals(Drift.Kind.SHIFTED, fromShelf.how().kind());
        assertEquals("shelf", fromShelf.twin().text());
        // 0.045 °F a day, in the middle of the last week of 44 days.
        assertEquals(-0.045 * 40.5 / 1.8, fromShelf.how().now(), 0.05);
        assertEquals(-fromShelf.how().now(), twin(pair, "shelf").how().now(), 1e-9);
        // A drift of 1.3 °F takes four weeks after the first: nothing was said before.
        assertTrue(sensors(EGG_ROOM, NOON.minus(Duration.ofDays(16))).stream()
                .allMatch(sensor -> sensor.findings().isEmpty()));
    }

    private static Finding.FromTwin twin(List<SensorNow> sensors, String name) {
        return assertInstanceOf(
                Finding.FromTwin.class, named(sensors, name).findings().getFirst());
    }

    private static SensorNow named(List<SensorNow> sensors, String name) {
        return sensors.stream()
                .filter(s -> s.channel().sensor().text().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** A keeper's thermometer that reads 3 °F above the logger, five times: either is off. */
    @Test
    void sensorOffFromItsKeeper_isSaid_untilAComparisonIsNoted() {
        var diary = new ArrayList<Kept>();
        for (int i = 0; i < 5; i++) {
            diary.add(note(i, NOON.minus(Duration.ofHours(60 - 12L * i)), reading("102.6F")));
        }
        var air = sensors(diary).getFirst();
        var finding = assertInstanceOf(Finding.FromHand.class, air.findings().getFirst());
        assertEquals(-3 / 1.8, finding.how().now(), 0.25);
        var at = NotedCare.of(channel("Setter", "logger", Quantity.AIR_TEMPERATURE));
        diary.add(note(
                9,
                NOON.minus(Duration.ofHours(1)),
                new SensorCompared(at, Amount.parse("99.6F"), Amount.parse("102.6F"), null, null, "")));
        var mended = sensors(diary).getFirst();
        assertEquals(List.of(), mended.findings());
        assertEquals(3 / 1.8, mended.correction().orElseThrow().offset(), 1e-9);
        assertEquals(mended.lastRead().orElseThrow() + 3, mended.lastCorrected().orElseThrow() * 1.8 + 32, 1e-9);
    }

    private static ClimateNoted reading(String dry) {
        return new ClimateNoted(new MachineName("Setter"), null, Temperature.parse(dry), null, null, List.of(), "");
    }

    private static Kept note(int number, Instant at, Payload payload) {
        var when = at.atOffset(ZoneOffset.UTC);
        return new Kept(
                new Entry(
                        EntryId.of(at.toEpochMilli(), 0, number),
                        new FarmId("Fallow End"),
                        when,
                        when,
                        new PersonName("Wren"),
                        new DeviceName("desk"),
                        Origin.NOTED,
                        payload,
                        1),
                at,
                Duration.ZERO);
    }

    private static List<SensorNow> sensors(List<Kept> book) {
        return sensors(STORE, in("Setter"), book);
    }

    private static List<SensorNow> sensors(MemoryReadings store, ReadingPlace place, List<Kept> book) {
        return new PlaceSensors(
                        store, Ledger.of(book).picture(), new Surroundings(Pressure.SEA_LEVEL, Ventilation.ASPIRATED))
                .of(place, NOON.minus(PlaceSensors.LOOKED_BACK), NOON);
    }

    /** Its hours of before are still in the window: they accuse nobody. */
    @Test
    void sensorSetAside_accusesItsGoodTwinNoLonger() {
        assertEquals(
                "by the door",
                twin(sensors(STORE, EGG_ROOM, List.of()), "shelf").twin().text());
        var door = NotedCare.of(eggRoom("by the door"));
        var aside = note(
                1,
                NOON.minus(Duration.ofHours(1)),
                new SensorTrustChanged(door, SensorTrust.SET_ASIDE, null, "it drifts"));
        for (var sensor : sensors(STORE, EGG_ROOM, List.of(aside))) {
            assertEquals(List.of(), sensor.findings(), sensor.channel().sensor().text());
        }
    }

    @Test
    void sensorThatDied_accusesItsGoodTwinNoLonger() {
        var store = new MemoryReadings();
        hourly(store, "good", Duration.ofDays(30), Duration.ZERO, hour -> 60 + hour % 3);
        hourly(store, "dead", Duration.ofDays(30), Duration.ofDays(4), hour -> 66 + hour % 3);
        assertEquals(
                List.of(), named(sensors(store, EGG_ROOM, List.of()), "good").findings());
        hourly(store, "dead", Duration.ofDays(4), Duration.ZERO, hour -> 66 + hour % 3);
        assertEquals(
                "dead", twin(sensors(store, EGG_ROOM, List.of()), "good").twin().text());
    }

    /** The first twin saw nothing, for it is frozen too; the second saw the door open. */
    @Test
    void sensorThatStays_isFound_whicheverTwinSawTheAirMove() {
        var store = new MemoryReadings();
        var twoDays = Duration.ofDays(2);
        hourly(store, "frozen", twoDays, Duration.ZERO, hour -> hour < 20 ? 60 + hour % 2 : 60);
        hourly(store, "frozen too", twoDays, Duration.ZERO, hour -> hour < 20 ? 60 + hour % 2 : 60);
        assertEquals(
                List.of(), named(sensors(store, EGG_ROOM, List.of()), "frozen").findings());
        hourly(store, "good", twoDays, Duration.ZERO, hour -> 60 + hour % 12);
        var found = named(sensors(store, EGG_ROOM, List.of()), "frozen").findings();
        assertEquals(
                Stuck.Why.TWIN_MOVED,
                assertInstanceOf(Finding.Stays.class, found.getFirst()).how().why());
    }

    /** One reading each hour, from so long before noon until so long before. */
    private static void hourly(
            MemoryReadings store, String sensor, Duration from, Duration to, IntToDoubleFunction byHour) {
        try (var load = store.load()) {
            int hour = 0;
            for (var at = NOON.minus(from); !at.isAfter(NOON.minus(to)); at = at.plus(Duration.ofHours(1))) {
                load.add(eggRoom(sensor), at.toEpochMilli(), byHour.applyAsDouble(hour++));
            }
            load.keep();
        }
    }

    private static Channel eggRoom(String sensor) {
        return new Channel(EGG_ROOM, new SensorName(sensor), Quantity.AIR_TEMPERATURE, ReadingUnit.FAHRENHEIT);
    }

    @Test
    void placeWithoutSensors_hasNone() {
        assertEquals(List.of(), sensors("Cellar", NOON));
    }
}
