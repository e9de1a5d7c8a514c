package eggwright.climate.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.book.fold.Ledger;
import eggwright.book.name.MachineName;
import eggwright.book.picture.Picture;
import eggwright.climate.air.AirTelling;
import eggwright.climate.air.SensorCare;
import eggwright.climate.excursion.Excursion;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.MemoryReadings;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.Readings;
import eggwright.climate.reading.SensorName;
import eggwright.invented.DemoSeason;
import eggwright.trade.SpeciesProfile;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.function.LongToDoubleFunction;
import org.junit.jupiter.api.Test;

/** The invented farm in the middle of its season; sensors that read every minute for four days. */
class WatchTest {
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final Instant NOW =
            ZonedDateTime.of(2027, 6, 8, 16, 0, 0, 0, ZONE).toInstant();
    private static final Picture FARM =
            Ledger.of(DemoSeason.of(NOW, ZONE, 1).entries()).picture();
    private static final ReadingPlace SETTER = new ReadingPlace.InMachine(new MachineName("Setter"));

    /** @param celsius by minutes before now */
    private static List<Alert> alerts(ReadingPlace place, int silentMinutes, LongToDoubleFunction celsius) {
        return alerts(FARM, place, silentMinutes, celsius);
    }

    private static List<Alert> alerts(
            Picture farm, ReadingPlace place, int silentMinutes, LongToDoubleFunction celsius) {
        int minutes = 4 * 24 * 60;
        var millis = new long[minutes - silentMinutes];
        var values = new double[millis.length];
        for (int i = 0; i < millis.length; i++) {
            long before = (long) minutes - i;
            millis[i] = NOW.minus(Duration.ofMinutes(before)).toEpochMilli();
            values[i] = celsius.applyAsDouble(before);
        }
        var channel = new Channel(place, SensorName.ONLY, Quantity.AIR_TEMPERATURE, ReadingUnit.CELSIUS);
        var readings = new MemoryReadings();
        readings.take(channel, Readings.of(millis, values));
        var telling = new AirTelling(readings, SensorCare.NONE);
        return new Watch(farm, telling, SpeciesProfile::of).at(NOW);
    }

    @Test
    void machineThatHoldsItsHeat_isLeftInPeace_whateverTheTableSays() {
        assertEquals(List.of(), alerts(SETTER, 0, before -> 37.5));
        assertEquals(List.of(), alerts(SETTER, 0, before -> 36.7));
    }

    @Test
    void machineThatCools_isTold_sinceItLeftItsBand() {
        var alert = alerts(SETTER, 0, before -> before <= 25 ? 35.0 : 37.5).getFirst();
        assertEquals(Excursion.Kind.COLD, alert.kind());
        assertEquals(NOW.minus(Duration.ofMinutes(25)), alert.since());
        assertEquals(35, alert.lastCelsius(), 1e-9);
    }

    @Test
    void machineThatRunsHot_isTold() {
        assertEquals(
                Excursion.Kind.HOT,
                alerts(SETTER, 0, before -> before <= 15 ? 38.6 : 37.5)
                        .getFirst()
                        .kind());
    }

    @Test
    void doorThatIsOpenForALook_isNoAlarm() {
        assertEquals(List.of(), alerts(SETTER, 0, before -> before <= 5 ? 34.0 : 37.5));
    }

    @Test
    void shortReturnIntoTheBand_doesNotBeginItAnew() {
        var alert = alerts(SETTER, 0, before -> before <= 60 && (before > 30 || before <= 15) ? 35.0 : 37.5)
                .getFirst();
        assertEquals(NOW.minus(Duration.ofMinutes(60)), alert.since());
    }

    /** The router hangs on the same mains: what was wrong when the sensor fell silent is not well because it is silent. */
    @Test
    void sensorThatFellSilentOutside_isRemembered_asSilent() {
        var alert = alerts(SETTER, 45, before -> before <= 90 ? 30.0 : 37.5).getFirst();
        assertEquals(Alert.Hearing.SILENT_SINCE, alert.hearing());
        assertEquals(List.of(), alerts(SETTER, 45, before -> 37.5));
        assertEquals(List.of(), alerts(SETTER, 7 * 60, before -> before <= 8 * 60 ? 30.0 : 37.5));
    }

    /** A hatcher runs some days a week: what it held while it stood idle is no habit of it. */
    @Test
    void machineThatStoodIdle_isHeldToWhatItHoldsAtWork() {
        assertEquals(List.of(), alerts(SETTER, 0, before -> before <= 30 * 60 ? 37.5 : 20.0));
    }

    @Test
    void patience_isTenMinutes_howeverTheClockFalls() {
        for (int shift = 0; shift < 5; shift++) {
            int open = shift;
            var now = NOW.plus(Duration.ofMinutes(open));
            assertEquals(List.of(), watched(now, before -> before <= 8 ? 34.0 : 37.5), "minute " + open);
            assertEquals(1, watched(now, before -> before <= 12 ? 34.0 : 37.5).size(), "minute " + open);
        }
    }

    private static List<Alert> watched(Instant now, LongToDoubleFunction celsius) {
        var readings = new MemoryReadings();
        var all = Readings.NONE;
        for (int before = 600; before > 0; before--) {
            all = all.and(Readings.of(now.minus(Duration.ofMinutes(before)), celsius.applyAsDouble(before)));
        }
        readings.take(new Channel(SETTER, SensorName.ONLY, Quantity.AIR_TEMPERATURE, ReadingUnit.CELSIUS), all);
        return new Watch(FARM, new AirTelling(readings, SensorCare.NONE), SpeciesProfile::of).at(now);
    }

    /** The old logger died, and the new one has told little yet: it is the one that is heard. */
    @Test
    void secondSensor_isHeard_howeverMuchTheFirstHasTold() {
        var readings = new MemoryReadings();
        var old = Readings.NONE;
        var fresh = Readings.NONE;
        for (int before = 1_400; before > 0; before -= 5) {
            var at = NOW.minus(Duration.ofMinutes(before));
            old = before > 60 ? old.and(Readings.of(at, 37.5)) : old;
            fresh = before <= 30 ? fresh.and(Readings.of(at, 20)) : fresh;
        }
        readings.take(new Channel(SETTER, new SensorName("old"), Quantity.AIR_TEMPERATURE, ReadingUnit.CELSIUS), old);
        readings.take(new Channel(SETTER, new SensorName("new"), Quantity.AIR_TEMPERATURE, ReadingUnit.CELSIUS), fresh);
        assertEquals(
                1,
                new Watch(FARM, new AirTelling(readings, SensorCare.NONE), SpeciesProfile::of)
                        .at(NOW)
                        .size());
    }

    /** A lamp that went out in the evening is still out in the morning. */
    @Test
    void coldNightInTheBrooder_isNoHabit() {
        for (int hours : new int[] {2, 8, 14, 20}) {
            assertEquals(
                    1,
                    alerts(new ReadingPlace.Brooder(), 0, before -> before <= hours * 60L ? 15.0 : 34.0)
                            .size(),
                    hours + " h");
        }
    }

    @Test
    void place_isCalledWell_onlyWhereASensorSaysSo() {
        assertEquals(new Watch.Standing.Inside(), standing(0, before -> 37.5));
        assertEquals(new Watch.Standing.NotTold(), standing(45, before -> 37.5));
        assertEquals(new Watch.Standing.NotTold(), standing(0, before -> before <= 5 ? 34.0 : 37.5));
    }

    private static Watch.Standing standing(int silentMinutes, LongToDoubleFunction celsius) {
        var readings = new MemoryReadings();
        var all = Readings.NONE;
        for (int before = 600; before > silentMinutes; before--) {
            all = all.and(Readings.of(NOW.minus(Duration.ofMinutes(before)), celsius.applyAsDouble(before)));
        }
        readings.take(new Channel(SETTER, SensorName.ONLY, Quantity.AIR_TEMPERATURE, ReadingUnit.CELSIUS), all);
        return new Watch(FARM, new AirTelling(readings, SensorCare.NONE), SpeciesProfile::of).of(SETTER, NOW);
    }

    @Test
    void machineWithoutEggs_andRoomsWithNothingAlive_areLeftInPeace() {
        var empty = new ReadingPlace.InMachine(new MachineName("Spare"));
        assertEquals(List.of(), alerts(empty, 0, before -> before <= 60 ? 20.0 : 37.5));
        assertEquals(
                List.of(),
                alerts(
                        Ledger.of(List.of()).picture(),
                        new ReadingPlace.EggRoom(),
                        0,
                        before -> before <= 60 ? 30.0 : 14.0));
    }

    /** 50 to 65 F (Mississippi State University Extension: Hatching egg storage period). */
    @Test
    void eggRoom_isHeldAgainstTheTrade_butNotAgainstItsOwnHabit() {
        var room = new ReadingPlace.EggRoom();
        assertEquals(List.of(), alerts(room, 0, before -> 14));
        assertEquals(1, alerts(room, 0, before -> before <= 60 ? 24.0 : 14.0).size());
        assertEquals(List.of(), alerts(room, 0, before -> 20));
    }

    @Test
    void brooder_isWatchedWhileChicksNeedHeat() {
        var chicks = alerts(new ReadingPlace.Brooder(), 0, before -> before <= 60 ? 15.0 : 34.0);
        assertEquals(Excursion.Kind.COLD, chicks.getFirst().kind());
    }
}
