package eggwright.climate.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Entry;
import eggwright.book.entry.IncidentKind;
import eggwright.book.entry.IncidentNoted;
import eggwright.book.entry.Kept;
import eggwright.book.fold.Ledger;
import eggwright.book.name.MachineName;
import eggwright.book.picture.Picture;
import eggwright.climate.air.AirTelling;
import eggwright.climate.air.KnownBy;
import eggwright.climate.air.SensorCare;
import eggwright.climate.air.Surroundings;
import eggwright.climate.development.HatchClock;
import eggwright.climate.development.Learnt;
import eggwright.climate.excursion.Excursion;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.MemoryReadings;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.ReadingsGathered;
import eggwright.climate.reading.SensorName;
import eggwright.climate.weight.Dial;
import eggwright.climate.weight.SetAdvice;
import eggwright.climate.weight.Shells;
import eggwright.egg.air.Ventilation;
import eggwright.invented.DemoSeason;
import eggwright.trade.SpeciesProfile;
import eggwright.units.Pressure;
import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The setter of the invented farm in the middle of its season. */
class MachineRoomTest {
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final ZonedDateTime NOW = ZonedDateTime.of(2027, 6, 8, 16, 0, 0, 0, ZONE);
    private static final Surroundings SEA_LEVEL = new Surroundings(Pressure.SEA_LEVEL, Ventilation.ASPIRATED);
    private static final MachineName SETTER = new MachineName("Setter");
    private static final Picture PICTURE =
            Ledger.of(DemoSeason.of(NOW.toInstant(), ZONE, 1).entries()).picture();

    private static MachineNow now(ReadingStore readings) {
        return new MachineRoom(
                        PICTURE,
                        new AirTelling(readings, SensorCare.NONE),
                        SEA_LEVEL,
                        SpeciesProfile::of,
                        NOW.toInstant())
                .of(SETTER);
    }

    @Test
    void sets_standByAge_withWhatTheyLost_andWhenTheyHatch() {
        var now = now(new MemoryReadings());
        assertFalse(now.sets().isEmpty());
        for (int i = 1; i < now.sets().size(); i++) {
            assertTrue(now.sets().get(i).day() <= now.sets().get(i - 1).day());
        }
        for (var set : now.sets()) {
            assertTrue(set.loss().now().pct() >= 0 && set.loss().now().pct() < 20, set::toString);
            assertTrue(set.hatch().firstPip().likely().isBefore(set.hatch().to().likely()));
            long away = Duration.between(
                            set.calendarMiddle(), set.hatch().middle().likely())
                    .abs()
                    .toHours();
            assertTrue(away < 24, set::toString);
        }
    }

    @Test
    void shells_areLearntFromEarlierSets_whereTheseWereNotWeighedTwice() {
        var from = now(new MemoryReadings()).sets().stream()
                .map(set -> set.loss().shells().from())
                .toList();
        assertTrue(from.contains(Shells.From.WEIGHED), from::toString);
        assertFalse(from.contains(Shells.From.PUBLISHED), from::toString);
    }

    @Test
    void advice_isForThoseWithDaysToGo_insideWhatIsSafe() {
        var advice = now(new MemoryReadings()).advice();
        for (var one : advice.sets()) {
            assertTrue(one.daysLeft() > 0);
            boolean isKept = one.step() == SetAdvice.Step.STAY || one.step() == SetAdvice.Step.WEIGH_FIRST;
            assertTrue(isKept || (one.run().pct() >= 30 && one.run().pct() <= 70), one::toString);
        }
        var turn = assertInstanceOf(Dial.Turn.class, advice.dial());
        assertTrue(turn.humidity().pct() >= 30 && turn.humidity().pct() <= 70);
        assertEquals(
                advice.weighed(),
                turn.landings().stream().map(Dial.Landing::advice).toList());
    }

    @Test
    void coolSensor_delaysTheHatch_ofEverySet() {
        var readings = new MemoryReadings();
        var channel = new Channel(
                new ReadingPlace.InMachine(SETTER), SensorName.ONLY, Quantity.AIR_TEMPERATURE, ReadingUnit.CELSIUS);
        var gathered = new ReadingsGathered();
        for (var at = NOW.minusDays(30); at.isBefore(NOW); at = at.plusMinutes(30)) {
            gathered.add(at.toInstant().toEpochMilli(), 36.5);
        }
        readings.take(channel, gathered.take());
        var cool = now(readings);
        var plain = now(new MemoryReadings());
        assertEquals(KnownBy.READINGS, cool.air().warmth());
        for (int i = 0; i < cool.sets().size(); i++) {
            double later = cool.sets().get(i).hatch().hoursLater().likely()
                    - plain.sets().get(i).hatch().hoursLater().likely();
            // A degree and more below the set-point: over an hour for each day, of which the farm's earlier sets, that
            // hatched
            // as usual under the same sensor, take a part back.
            assertTrue(
                    later > 0.5 * cool.sets().get(i).day(),
                    later + " h on day " + cool.sets().get(i).day());
        }
    }

    @Test
    void powerCut_inTheReadings_isANight_withItsCostForEachSet() {
        var readings = new MemoryReadings();
        var channel = new Channel(
                new ReadingPlace.InMachine(SETTER), SensorName.ONLY, Quantity.AIR_TEMPERATURE, ReadingUnit.CELSIUS);
        var gathered = new ReadingsGathered();
        var cut = NOW.minusDays(3).withHour(2);
        for (var at = NOW.minusDays(10); at.isBefore(NOW); at = at.plusMinutes(5)) {
            boolean isOut = !at.isBefore(cut) && at.isBefore(cut.plusHours(5));
            gathered.add(at.toInstant().toEpochMilli(), isOut ? 24.0 : 37.5);
        }
        readings.take(channel, gathered.take());
        var nights = new MachineNights(PICTURE, new AirTelling(readings, SensorCare.NONE), SpeciesProfile::of)
                .of(SETTER, NOW.minusDays(10).toInstant(), NOW.toInstant());
        assertEquals(1, nights.size());
        var night = nights.getFirst();
        assertEquals(Duration.ofHours(5), night.excursion().length());
        assertEquals(24, night.excursion().extremeCelsius());
        assertFalse(night.sets().isEmpty());
        for (var set : night.sets()) {
            assertTrue(
                    set.cost().hoursLater().likely() > 2
                            && set.cost().hoursLater().likely() < 9,
                    set::toString);
            assertTrue(set.cost().lossHighPct() > 0);
        }
    }

    @Test
    void night_isFollowedByWhatWasCounted_besideTheOtherSets() {
        var readings = new MemoryReadings();
        var channel = new Channel(
                new ReadingPlace.InMachine(SETTER), SensorName.ONLY, Quantity.AIR_TEMPERATURE, ReadingUnit.CELSIUS);
        var gathered = new ReadingsGathered();
        var cut = NOW.minusDays(20).withHour(2);
        for (var at = NOW.minusDays(29); at.isBefore(NOW); at = at.plusMinutes(5)) {
            boolean isOut = !at.isBefore(cut) && at.isBefore(cut.plusHours(5));
            gathered.add(at.toInstant().toEpochMilli(), isOut ? 24.0 : 37.5);
        }
        readings.take(channel, gathered.take());
        var night = new MachineNights(PICTURE, new AirTelling(readings, SensorCare.NONE), SpeciesProfile::of)
                .of(SETTER, NOW.minusDays(29).toInstant(), NOW.toInstant())
                .getFirst();
        var known = night.sets().stream().flatMap(set -> set.since().stream()).toList();
        assertFalse(known.isEmpty());
        for (var since : known) {
            assertTrue(since.at().isAfter(cut.toInstant()), since::toString);
            assertTrue(since.lost().of() > 0 && since.othersLost().of() > 0, since::toString);
            assertTrue(since.othersLost().pct() < 25, since::toString);
        }
        assertTrue(known.stream().anyMatch(since -> since.told() == Aftermath.Told.LOOK), known::toString);
    }

    /** Noted at the desk, where no sensor hangs: which way, and how far it is taken to have gone. */
    @ParameterizedTest
    @CsvSource({
        "POWER_CUT, , COLD, 20, NOTED",
        "DOOR_OPEN, 33, COLD, 33, READ_BY_HAND",
        "TOO_HOT, , HOT, 40, NOTED",
        "FAN_STOPPED, 40.5, HOT, 40.5, READ_BY_HAND",
        "FAN_STOPPED, , , , ",
        "TURNER_STOPPED, , , , "
    })
    void incident_isANight_whereItSaysWhichWayTheHeatWent(
            IncidentKind what, Double read, Excursion.Kind kind, Double celsius, Night.How how) {
        var from = NOW.minusDays(3).toOffsetDateTime();
        var incident = new IncidentNoted(
                what,
                SETTER,
                from.plusHours(3),
                read == null ? null : eggwright.units.Temperature.ofCelsius(read),
                "as told");
        var nights = new MachineNights(
                        Ledger.of(with(incident)).picture(),
                        new AirTelling(new MemoryReadings(), SensorCare.NONE),
                        SpeciesProfile::of)
                .of(SETTER, NOW.minusDays(10).toInstant(), NOW.toInstant());
        if (kind == null) {
            assertTrue(nights.isEmpty());
            return;
        }
        assertEquals(kind, nights.getFirst().excursion().kind());
        assertEquals(celsius, nights.getFirst().excursion().extremeCelsius());
        assertEquals(how, nights.getFirst().how());
    }

    /** The sensor hangs on the same mains: one reading in the first minute is not the whole night. */
    @Test
    void notedNight_isKept_whereTheSensorFellSilentWithTheMains() {
        var readings = new MemoryReadings();
        var channel = new Channel(
                new ReadingPlace.InMachine(SETTER), SensorName.ONLY, Quantity.AIR_TEMPERATURE, ReadingUnit.CELSIUS);
        var gathered = new ReadingsGathered();
        var cut = NOW.minusDays(3);
        for (var at = NOW.minusDays(10); at.isBefore(NOW); at = at.plusMinutes(5)) {
            if (!at.isAfter(cut) || !at.isBefore(cut.plusHours(5))) {
                gathered.add(at.toInstant().toEpochMilli(), 37.5);
            }
        }
        readings.take(channel, gathered.take());
        var incident = new IncidentNoted(
                IncidentKind.POWER_CUT, SETTER, cut.plusHours(5).toOffsetDateTime(), null, "mains");
        var nights = new MachineNights(
                        Ledger.of(with(incident)).picture(),
                        new AirTelling(readings, SensorCare.NONE),
                        SpeciesProfile::of)
                .of(SETTER, NOW.minusDays(10).toInstant(), NOW.toInstant());
        assertEquals(1, nights.size());
        assertEquals(Night.How.NOTED, nights.getFirst().how());
        assertEquals(Duration.ofHours(5), nights.getFirst().excursion().length());
    }

    /** The invented season without its own incidents, and with this one, three days ago. */
    private static java.util.List<Kept> with(IncidentNoted incident) {
        var from = NOW.minusDays(3).toOffsetDateTime();
        var entries = new java.util.ArrayList<>(DemoSeason.of(NOW.toInstant(), ZONE, 1).entries().stream()
                .filter(kept -> !(kept.entry().payload() instanceof IncidentNoted))
                .toList());
        var entry = entries.getLast().entry();
        entries.add(new Kept(
                new Entry(
                        eggwright.book.name.EntryId.of(1, 2, 3),
                        entry.farm(),
                        from,
                        from,
                        entry.who(),
                        entry.device(),
                        entry.origin(),
                        incident,
                        1),
                from.toInstant(),
                Duration.ZERO));
        return entries;
    }

    @Test
    void hatch_isSurer_afterTakeOffs_thanByTheHandbookAlone() {
        var set = now(new MemoryReadings()).sets().getFirst();
        double width =
                set.hatch().hoursLater().high() - set.hatch().hoursLater().low();
        var plain = HatchClock.of(
                SpeciesProfile.of(set.species()),
                set.startedAt(),
                NOW.toInstant(),
                java.util.List.of(),
                SpeciesProfile.of(set.species()).setterTemperature().value(),
                set.storedDays(),
                Learnt.NOTHING);
        double bare = plain.hoursLater().high() - plain.hoursLater().low();
        assertTrue(width < bare - 4, width + " h, by the handbook " + bare);
    }
}
