package eggwright.climate.air;

import static eggwright.climate.reading.Logger.AIR;
import static eggwright.climate.reading.Logger.CELSIUS;
import static eggwright.climate.reading.Logger.MONDAY;
import static eggwright.climate.reading.Logger.every;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Entry;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Origin;
import eggwright.book.entry.Payload;
import eggwright.book.entry.ReadingsReleased;
import eggwright.book.entry.SensorCompared;
import eggwright.book.entry.SensorTrust;
import eggwright.book.entry.SensorTrustChanged;
import eggwright.book.entry.Withdrawn;
import eggwright.book.fold.Ledger;
import eggwright.book.name.DeviceName;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.name.PersonName;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.MemoryReadings;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.Readings;
import eggwright.climate.rollup.Cut;
import eggwright.climate.rollup.Rollup;
import eggwright.climate.sensor.Aside;
import eggwright.climate.sensor.Doubt;
import eggwright.units.Amount;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What was noted of a sensor, as it changes what the sensor tells. */
class NotedCareTest {
    private static final Instant END = MONDAY.plus(Duration.ofHours(6));

    private final List<Kept> book = new ArrayList<>();
    private final MemoryReadings store = new MemoryReadings();

    @BeforeEach
    void readSixHours_withALooseProbeInTheThird() {
        var values = new double[360];
        java.util.Arrays.fill(values, 99.0);
        values[130] = 185;
        values[131] = 185;
        store.take(AIR, every(60, values));
    }

    private static OffsetDateTime at(int minutes) {
        return MONDAY.plusSeconds(60L * minutes).atOffset(ZoneOffset.ofHours(-5));
    }

    private EntryId note(int minutes, Payload payload) {
        var at = at(minutes);
        var id = EntryId.of(at.toInstant().toEpochMilli(), 0, book.size());
        book.add(new Kept(
                new Entry(
                        id,
                        new FarmId("Fallow End"),
                        at,
                        at,
                        new PersonName("Wren"),
                        new DeviceName("desk"),
                        Origin.NOTED,
                        payload,
                        1),
                at.toInstant(),
                Duration.ZERO));
        return id;
    }

    private NotedCare care() {
        return new NotedCare(Ledger.of(book).picture());
    }

    private List<Rollup> hours() {
        return new AirTelling(store, care()).temperatures(AIR.place(), MONDAY, END, Cut.HOUR);
    }

    private List<Double> means() {
        return hours().stream().map(h -> Math.round(h.mean() * 100) / 100.0).toList();
    }

    private static SensorCompared compared(String showed, String reference) {
        return new SensorCompared(
                NotedCare.of(AIR), Amount.parse(showed), Amount.parse(reference), null, null, "glass");
    }

    @Test
    void correction_isAddedFromItsMomentOn_toThatSensorOnly() {
        note(120, compared("99.0F", "99.9F"));
        assertEquals(List.of(37.22, 37.22, 37.72, 37.72, 37.72, 37.72), means());
        var other = new Channel(new ReadingPlace.EggRoom(), AIR.sensor(), AIR.quantity(), AIR.unit());
        assertTrue(care().corrections(other).inOrder().isEmpty());
        var wet = new Channel(AIR.place(), AIR.sensor(), Quantity.WET_BULB, ReadingUnit.FAHRENHEIT);
        assertTrue(care().corrections(wet).inOrder().isEmpty());
    }

    @Test
    void loggerSwitchedToCelsius_isTheSameSensor() {
        note(0, compared("99.0F", "99.9F"));
        assertEquals(0.5, care().corrections(CELSIUS).at(END), 1e-9);
    }

    @Test
    void laterComparison_takesThePlaceOfTheEarlier() {
        note(60, compared("99.0F", "99.9F"));
        note(180, compared("99.0F", "99.0F"));
        assertEquals(List.of(37.22, 37.72, 37.72, 37.22, 37.22, 37.22), means());
    }

    @Test
    void releasedReadings_areLetIn_andHeldAgainWhenTheReleaseIsWithdrawn() {
        var before = hours();
        var release =
                note(300, new ReadingsReleased(NotedCare.of(AIR), at(130), at(131), "the probe lay on the heater"));
        assertEquals(85.0, hours().get(2).max());
        note(301, new Withdrawn(release, release, "no"));
        assertEquals(before, hours());
    }

    @Test
    void sensorSetAside_tellsNothing_untilItIsTakenBack() {
        note(90, new SensorTrustChanged(NotedCare.of(AIR), SensorTrust.SET_ASIDE, at(60), "wet"));
        assertEquals(List.of(37.22), means());
        note(250, new SensorTrustChanged(NotedCare.of(AIR), SensorTrust.TAKEN_BACK, at(240), "dry again"));
        assertEquals(List.of(37.22, 37.22, 37.22), means());
        assertEquals(List.of(new Aside(at(60).toInstant(), at(240).toInstant())), care().aside(AIR));
        var held = care().sifted(store, AIR, MONDAY, END).held();
        assertEquals(180, held.stream().filter(h -> h.why() == Doubt.SET_ASIDE).count());
    }

    /** Letting readings in does not take back a sensor that was set aside. */
    @Test
    void releaseOfASensorThatIsSetAside_letsNothingIn() {
        note(0, new SensorTrustChanged(NotedCare.of(AIR), SensorTrust.SET_ASIDE, null, ""));
        note(1, new ReadingsReleased(NotedCare.of(AIR), at(0), at(400), ""));
        assertEquals(List.of(), hours());
    }

    /** Whatever stretch is asked for, the same reading is held or not. */
    @Test
    void reading_isHeldAlike_whateverTheStretchThatIsAskedFor() {
        store.take(CELSIUS, every(60, 37.5, 37.5, 14.0, 14.1, 14.0, 37.5, 37.4, 37.5));
        var whole = care().sifted(store, CELSIUS, MONDAY, END).good();
        for (int minute = 0; minute < 8; minute++) {
            var from = MONDAY.plusSeconds(60L * minute);
            assertEquals(
                    whole.between(from.toEpochMilli(), END.toEpochMilli()),
                    care().sifted(store, CELSIUS, from, END).good(),
                    "from minute " + minute);
        }
    }

    @Test
    void notes_meanTheSame_inAnyOrderOfArrival() {
        note(60, compared("99.0F", "99.9F"));
        note(60, new SensorTrustChanged(NotedCare.of(AIR), SensorTrust.SET_ASIDE, null, ""));
        note(120, new SensorTrustChanged(NotedCare.of(AIR), SensorTrust.TAKEN_BACK, null, ""));
        note(150, new ReadingsReleased(NotedCare.of(AIR), at(100), at(150), ""));
        note(180, compared("99.0F", "98.1F"));
        var whole = hours();
        for (long seed = 0; seed < 20; seed++) {
            Collections.shuffle(book, new Random(seed));
            assertEquals(whole, hours());
        }
    }

    /** Nothing is ever lost: what counts and what is held is together what was read. */
    @Test
    void whatIsHeld_andWhatCounts_isAllThatWasRead() {
        note(60, new SensorTrustChanged(NotedCare.of(AIR), SensorTrust.SET_ASIDE, null, ""));
        note(120, new SensorTrustChanged(NotedCare.of(AIR), SensorTrust.TAKEN_BACK, null, ""));
        var sifted = care().sifted(store, AIR, MONDAY, END);
        var all =
                sifted.held().stream().map(h -> Readings.of(h.at(), h.value())).reduce(sifted.good(), Readings::and);
        assertEquals(store.between(AIR, MONDAY, END), all);
        assertEquals(Optional.empty(), care().corrections(AIR).holding(END));
    }
}
