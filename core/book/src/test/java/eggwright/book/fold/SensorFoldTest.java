package eggwright.book.fold;

import static eggwright.book.diary.Diary.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.diary.Diary;
import eggwright.book.entry.EntryReason;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Payload;
import eggwright.book.entry.ReadingsReleased;
import eggwright.book.entry.Replaced;
import eggwright.book.entry.SensorAt;
import eggwright.book.entry.SensorCompared;
import eggwright.book.entry.SensorPlace;
import eggwright.book.entry.SensorQuantity;
import eggwright.book.entry.SensorTrust;
import eggwright.book.entry.SensorTrustChanged;
import eggwright.book.entry.Withdrawn;
import eggwright.book.name.EntryId;
import eggwright.book.name.MachineName;
import eggwright.units.Amount;
import eggwright.units.OutOfRange;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a person says of a sensor, folded. */
class SensorFoldTest {
    private static final SensorAt TOP = new SensorAt(
            SensorPlace.IN_MACHINE, new MachineName("Setter 1"), "top shelf", SensorQuantity.AIR_TEMPERATURE);
    private static final SensorAt EGG_ROOM =
            new SensorAt(SensorPlace.EGG_ROOM, null, "logger", SensorQuantity.HUMIDITY);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    private static SensorCompared compared(String showed, String reference) {
        return new SensorCompared(TOP, Amount.parse(showed), Amount.parse(reference), null, null, "");
    }

    @Test
    void comparison_holdsFromItsOwnMoment_orFromTheOneItNames() {
        var diary = new Diary();
        diary.note(MONDAY, compared("98.9F", "99.5F"));
        diary.note(
                MONDAY.plusDays(2),
                new SensorCompared(TOP, null, null, Amount.parse("-0.3C"), MONDAY.minusDays(1), "ice"));
        var sensor = diary.picture().sensor(TOP).orElseThrow();
        assertEquals(
                List.of(MONDAY.minusDays(1), MONDAY),
                sensor.compared().stream().map(c -> c.from()).toList());
        assertEquals(-0.3, sensor.compared().get(0).what().correction(), 1e-12);
        assertEquals(0.6 / 1.8, sensor.compared().get(1).what().correction(), 1e-12);
    }

    @Test
    void releaseThatIsWithdrawn_leavesAllAsBefore() {
        var diary = new Diary();
        diary.note(MONDAY, compared("98.9F", "99.5F"));
        var before = diary.picture().sensors();
        var release = diary.note(MONDAY.plusHours(1), new ReadingsReleased(TOP, MONDAY.minusHours(2), MONDAY, "seen"));
        assertEquals(1, diary.picture().sensor(TOP).orElseThrow().released().size());
        diary.note(MONDAY.plusHours(2), new Withdrawn(release, release, "wrong night"));
        assertEquals(before, diary.picture().sensors());
    }

    @Test
    void comparisonThatIsMended_countsAsMended_alsoForAnotherSensor() {
        var diary = new Diary();
        var first = diary.note(MONDAY, compared("98.9F", "99.5F"));
        var other = new SensorCompared(EGG_ROOM, Amount.parse("70%"), Amount.parse("75%"), null, null, "salt");
        diary.note(MONDAY.plusHours(1), new Replaced(first, first, null, other));
        assertEquals(List.of(EGG_ROOM), List.copyOf(diary.picture().sensors().keySet()));
        assertEquals(
                5,
                diary.picture()
                        .sensor(EGG_ROOM)
                        .orElseThrow()
                        .compared()
                        .getFirst()
                        .what()
                        .correction());
    }

    /** Any notes of two sensors, some mended, some withdrawn, arriving in any order. */
    @ParameterizedTest
    @MethodSource("seeds")
    void sensors_areTheSame_inWhateverOrderNotesArrive(long seed) {
        var random = new Random(seed);
        var entries = new ArrayList<>(anyNotes(random).entries());
        var whole = Ledger.of(entries).picture().sensors();
        Collections.shuffle(entries, random);
        assertEquals(whole, Ledger.of(entries).picture().sensors(), "seed " + seed);
        var ledger = new Ledger();
        for (Kept one : entries) {
            ledger.add(one);
            ledger.picture();
        }
        assertEquals(whole, ledger.picture().sensors(), "seed " + seed);
    }

    private static Diary anyNotes(Random random) {
        var diary = new Diary();
        var noted = new ArrayList<EntryId>();
        for (int i = 0; i < 30; i++) {
            var at = MONDAY.plusMinutes(random.nextInt(600));
            if (noted.isEmpty() || random.nextInt(4) > 0) {
                noted.add(diary.note(at, anything(random, at)));
            } else {
                var target = noted.get(random.nextInt(noted.size()));
                diary.note(
                        at,
                        random.nextBoolean()
                                ? new Withdrawn(target, target, "")
                                : new Replaced(target, target, null, anything(random, at)));
            }
        }
        return diary;
    }

    private static Payload anything(Random random, OffsetDateTime at) {
        var sensor = random.nextBoolean() ? TOP : EGG_ROOM;
        var unit = sensor.equals(TOP) ? "F" : "%";
        var from = random.nextBoolean() ? null : at.minusMinutes(random.nextInt(300));
        return switch (random.nextInt(3)) {
            case 0 -> new SensorCompared(sensor, null, null, Amount.parse(random.nextInt(9) + unit), from, "");
            case 1 ->
                new SensorTrustChanged(
                        sensor, random.nextBoolean() ? SensorTrust.SET_ASIDE : SensorTrust.TAKEN_BACK, from, "");
            default -> new ReadingsReleased(sensor, at.minusMinutes(random.nextInt(100)), at, "");
        };
    }

    private static void refused(EntryReason why, Runnable made) {
        var refused = assertThrows(OutOfRange.class, made::run);
        assertEquals(why, refused.reason().orElseThrow());
    }

    @Test
    void whatCannotBe_isRefused_withItsReason() {
        refused(EntryReason.AMOUNT_OF_OTHER_QUANTITY, () -> compared("52%", "99.5F"));
        refused(
                EntryReason.COMPARED_WITH_NOTHING,
                () -> new SensorCompared(TOP, Amount.parse("99F"), null, null, null, ""));
        refused(
                EntryReason.COMPARED_WITH_NOTHING,
                () -> new SensorCompared(TOP, Amount.parse("99F"), Amount.parse("99F"), Amount.parse("1F"), null, ""));
        refused(EntryReason.CORRECTION_TOO_LARGE, () -> compared("99.5C", "37.5C"));
        refused(EntryReason.MOMENTS_BACKWARDS, () -> new ReadingsReleased(TOP, MONDAY, MONDAY.minusMinutes(1), ""));
        refused(
                EntryReason.YEAR_OUTSIDE,
                () -> new SensorTrustChanged(TOP, SensorTrust.SET_ASIDE, OffsetDateTime.MAX, ""));
        refused(
                EntryReason.SENSOR_WITHOUT_MACHINE,
                () -> new SensorAt(SensorPlace.IN_MACHINE, null, "logger", SensorQuantity.HUMIDITY));
        refused(
                EntryReason.MACHINE_OF_OTHER_PLACE,
                () -> new SensorAt(SensorPlace.BROODER, new MachineName("Setter"), "logger", SensorQuantity.HUMIDITY));
        assertTrue(
                new SensorCompared(TOP, Amount.parse("99F"), Amount.parse("37.4C"), null, null, "").correction() > 0);
    }
}
