package eggwright.egg.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.units.Humidity;
import eggwright.units.OutOfRange;
import eggwright.units.Pressure;
import eggwright.units.Temperature;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoistAirTest {
    private static final long SEED = 20260411;
    private static final double POINTS = 1e-8;

    /** 37.5 °C and 50 %: e = 3227.8 Pa, 22.51 g/m3 (by hand, from IAPWS-95 saturation). */
    @Test
    void air_holdsTheWaterWorkedOutByHand() {
        var air = MoistAir.of(Temperature.ofCelsius(37.5), new Humidity(50), Pressure.SEA_LEVEL);
        assertEquals(3.2278, air.vapour().kilopascals(), 0.0001);
        assertEquals(22.51, air.absoluteHumidityGramsPerCubicMetre(), 0.005);
    }

    @Test
    void humidityAndWetBulb_invertEachOther() {
        var random = new SplittableRandom(SEED);
        for (int i = 0; i < 20_000; i++) {
            var dry = Temperature.ofCelsius(random.nextDouble(10, 60));
            var barometer = Pressure.ofKilopascals(random.nextDouble(50, 110));
            var ventilation = random.nextBoolean() ? Ventilation.ASPIRATED : Ventilation.STILL;
            var wet = Temperature.ofCelsius(random.nextDouble(0, dry.celsius()));
            MoistAir air;
            try {
                air = MoistAir.ofWetBulb(dry, wet, barometer, ventilation);
            } catch (OutOfRange noSuchAir) {
                continue;
            }
            var back = air.wetBulb(ventilation);
            assertEquals(wet.celsius(), back.celsius(), 1e-9, "seed " + SEED + ", case " + i + ", " + air);
            var again = MoistAir.of(dry, air.humidity(), barometer);
            assertEquals(
                    air.humidity().pct(),
                    MoistAir.ofWetBulb(dry, again.wetBulb(ventilation), barometer, ventilation)
                            .humidity()
                            .pct(),
                    POINTS,
                    "seed " + SEED + ", case " + i);
            assertTrue(back.celsius() <= dry.celsius() + 1e-9);
            air.dewPoint().ifPresent(dew -> assertTrue(dew.celsius() <= wet.celsius() + 1e-9, air.toString()));
        }
    }

    @Test
    void wetBulb_isTheDryBulb_inSaturatedAir() {
        var air = MoistAir.of(Temperature.ofFahrenheit(99.5), new Humidity(100), Pressure.SEA_LEVEL);
        assertEquals(99.5, air.wetBulb(Ventilation.STILL).fahrenheit(), 1e-9);
        assertEquals(99.5, air.dewPoint().orElseThrow().fahrenheit(), 1e-9);
    }

    @Test
    void humidity_isFull_whenBothBulbsReadTheSameInEitherScale() {
        var air = MoistAir.ofWetBulb(
                Temperature.parse("37.5C"), Temperature.parse("99.5F"), Pressure.SEA_LEVEL, Ventilation.ASPIRATED);
        assertEquals(100, air.humidity().pct(), POINTS);
    }

    /** Room air keeps its vapour when the machine warms it: RH inside is e of the room over saturation inside. */
    @Test
    void air_keepsItsVapour_whenItIsWarmed() {
        var room = MoistAir.of(Temperature.ofCelsius(20), new Humidity(50), Pressure.SEA_LEVEL);
        var inside = room.at(Temperature.ofCelsius(37.5));
        // 0.5 x 2339.3 / 6455.5 Pa, steam table values.
        assertEquals(18.119, inside.humidity().pct(), 0.002);
        assertThrows(OutOfRange.class, () -> room.at(Temperature.ofCelsius(5)));
    }

    @ParameterizedTest
    @CsvSource({
        "86F, 99.5F, 'The wet bulb, 99.5F, is above the dry bulb, 86.0F'",
        "37.5C, 5C, 'No air at 37.5C can show a wet bulb of 5.0C'",
        "20C, -1C, 'The wet bulb, -1.0C, is below freezing'",
        "99.5C, 86C, 'Dry bulb 99.5 °C is outside 0.0 to 60.0 °C'",
    })
    void readings_areRefusedInPlainWords_whenNoAirCanGiveThem(String dry, String wet, String words) {
        var refused = assertThrows(
                OutOfRange.class,
                () -> MoistAir.ofWetBulb(
                        Temperature.parse(dry), Temperature.parse(wet), Pressure.SEA_LEVEL, Ventilation.ASPIRATED));
        assertTrue(String.valueOf(refused.getMessage()).startsWith(words), refused.getMessage());
    }

    @Test
    void wetBulb_isRefused_whenTheWickWouldFreeze() {
        var air = MoistAir.of(Temperature.ofCelsius(3), new Humidity(20), Pressure.SEA_LEVEL);
        assertThrows(OutOfRange.class, () -> air.wetBulb(Ventilation.ASPIRATED));
    }

    /**
     * Room humidity at which a cold egg sweats, in whole percent: a table that was worked out at sea
     * level with another saturation formula (Buck 1996).
     */
    @ParameterizedTest
    @CsvSource({
        "55, 65, 70", "55, 70, 59", "55, 75, 50", "55, 80, 42", "55, 85, 36",
        "60, 65, 84", "60, 70, 71", "60, 75, 60", "60, 80, 51", "60, 85, 43",
        "65, 70, 84", "65, 75, 71", "65, 80, 60", "65, 85, 51",
    })
    void egg_sweats_fromTheHumidityOfTheTable(double egg, double room, double pct) {
        var cold = Temperature.ofFahrenheit(egg);
        var air = MoistAir.of(Temperature.ofFahrenheit(room), new Humidity(pct - 2), Pressure.SEA_LEVEL);
        var dry = assertInstanceOf(Sweating.StaysDry.class, Sweating.of(cold, air));
        assertEquals(pct, dry.safeHumidity().pct(), 0.6);
        var wetter = MoistAir.of(Temperature.ofFahrenheit(room), new Humidity(pct + 2), Pressure.SEA_LEVEL);
        var wet = assertInstanceOf(Sweating.Sweats.class, Sweating.of(cold, wetter));
        // Warmed to the dew point, it does not.
        assertInstanceOf(
                Sweating.StaysDry.class,
                Sweating.of(Temperature.ofCelsius(wet.safeEgg().celsius() + 1e-6), wetter));
    }

    @Test
    void egg_staysDry_inAirWithoutWater() {
        var air = MoistAir.of(Temperature.ofCelsius(25), new Humidity(0), Pressure.SEA_LEVEL);
        assertInstanceOf(Sweating.StaysDry.class, Sweating.of(Temperature.ofCelsius(13), air));
    }
}
