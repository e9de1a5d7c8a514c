package eggwright.climate.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.climate.air.AirHistory;
import eggwright.climate.air.AirHour;
import eggwright.climate.air.AirTold;
import eggwright.climate.air.HandRead;
import eggwright.climate.air.KnownBy;
import eggwright.climate.air.SetPoint;
import eggwright.trade.Species;
import eggwright.units.Humidity;
import eggwright.units.Temperature;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class StorageLossTest {
    private static final Shells SHELLS = Shells.published(Species.PHEASANT);

    private static List<AirHour> room(double days, double celsius, double humidity, List<HandRead> read) {
        return AirHistory.of(
                new AirTold(List.of(), List.of(), List.of(), read),
                new SetPoint(Temperature.ofCelsius(celsius), new Humidity(humidity)),
                Setter.at(0),
                Setter.SET.minus(Duration.ofMinutes(Math.round(days * 1440))),
                Setter.SET);
    }

    /** "About half a percent to one percent a week" in a good store: common practice, from memory. */
    @Test
    void weekInAGoodStore_takesAboutAPercent() {
        var week = StorageLoss.of(7, room(7, 14, 70, List.of()), SHELLS);
        assertTrue(week.loss().pct() > 0.4 && week.loss().pct() < 1.2, week::toString);
        assertEquals(KnownBy.SET_POINT, week.air());
        assertTrue(week.loss().low() >= 0 && week.loss().high() > week.loss().pct());
    }

    @Test
    void loss_growsWithTheDays_andTheDryness() {
        double week =
                StorageLoss.of(7, room(7, 14, 70, List.of()), SHELLS).loss().pct();
        assertEquals(
                2 * week,
                StorageLoss.of(14, room(14, 14, 70, List.of()), SHELLS).loss().pct(),
                1e-9);
        assertTrue(StorageLoss.of(7, room(7, 14, 50, List.of()), SHELLS).loss().pct() > week);
        assertTrue(StorageLoss.of(7, room(7, 20, 70, List.of()), SHELLS).loss().pct() > week);
    }

    @Test
    void roomThatWasRead_isSurer() {
        var read = new ArrayList<HandRead>();
        for (int day = 0; day < 7; day++) {
            read.add(new HandRead(
                    Setter.SET.minus(Duration.ofDays(day)), Temperature.ofCelsius(14), null, new Humidity(70)));
        }
        var known = StorageLoss.of(7, room(7, 14, 70, read), SHELLS);
        var guessed = StorageLoss.of(7, room(7, 14, 70, List.of()), SHELLS);
        assertEquals(KnownBy.READINGS, known.air());
        assertTrue(known.loss().high() < guessed.loss().high());
    }

    @Test
    void eggsWhoseLayDatesNobodyNoted_haveNone() {
        assertEquals(0, StorageLoss.of(0, List.of(), SHELLS).days());
    }
}
