package eggwright.climate.care;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.fold.Ledger;
import eggwright.book.name.MachineName;
import eggwright.book.picture.Picture;
import eggwright.climate.air.Surroundings;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.MemoryReadings;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.SensorName;
import eggwright.climate.sensor.Doubt;
import eggwright.climate.sensor.Drift;
import eggwright.egg.air.Ventilation;
import eggwright.invented.DemoSeason;
import eggwright.units.Pressure;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The sensors of the invented farm: two loggers in good order, a probe that drifts. */
class PlaceSensorsTest {
    private static final Instant NOON = Instant.parse("2027-05-12T17:00:00Z");
    private static final MemoryReadings STORE = new MemoryReadings();
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
            DemoSeason.drifting(
                    NOON,
                    (machine, sensor, at, fahrenheit) ->
                            load.add(channel(machine, sensor, Quantity.AIR_TEMPERATURE), at, fahrenheit));
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
        return new PlaceSensors(STORE, picture, new Surroundings(Pressure.SEA_LEVEL, Ventilation.ASPIRATED))
                .of(in(machine), now.minus(PlaceSensors.LOOKED_BACK), now);
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
    void probeThatDrifts_isFound_againstItsTwinAndAgainstItsKeeper() {
        var probe = sensors("Hatcher", NOON).stream()
                .filter(s -> s.channel().sensor().text().equals("probe by the door"))
                .findFirst()
                .orElseThrow();
        var twin = assertInstanceOf(Finding.FromTwin.class, probe.findings().getFirst());
        assertEquals(Drift.Kind.SHIFTED, twin.how().kind());
        assertEquals(SensorName.ONLY, twin.twin());
        // 0.045 °F a day over some 39 days.
        assertEquals(-0.045 * 39 / 1.8, twin.how().now(), 0.1);
        var logger = sensors("Hatcher", NOON).stream()
                .filter(s -> s.channel().sensor().equals(SensorName.ONLY)
                        && s.channel().quantity() == Quantity.AIR_TEMPERATURE)
                .findFirst()
                .orElseThrow();
        assertEquals(
                -twin.how().now(),
                assertInstanceOf(Finding.FromTwin.class, logger.findings().getFirst())
                        .how()
                        .now(),
                1e-9);
    }

    @Test
    void placeWithoutSensors_hasNone() {
        assertEquals(List.of(), sensors("Cellar", NOON));
    }
}
