package eggwright.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.fold.Ledger;
import eggwright.book.name.SetName;
import eggwright.forecast.history.Came;
import eggwright.forecast.history.Passage;
import eggwright.forecast.history.StageKind;
import eggwright.invented.season.Season;
import eggwright.invented.truth.Truth;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ForecasterTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 5);

    @Test
    void oneSetByItself_isForecastAsAmongAll() {
        var ledger =
                Ledger.of(Season.of(Truth.PLAIN, 4, LocalDate.of(2027, 3, 22)).entries());
        var then = ledger.asOf(LocalDate.of(2027, 5, 20).atStartOfDay().toInstant(ZoneOffset.UTC))
                .picture();
        var all = Forecaster.of(then, SpeciesProfile::of).sets();
        assertTrue(all.size() >= 3, all.toString());
        for (var set : all) {
            var alone = Forecaster.of(then, SpeciesProfile::of, set.set()).orElseThrow();
            assertEquals(set.chicks().mean(), alone.chicks().mean(), 1e-9);
            assertEquals(set.chicks().interval(0.95), alone.chicks().interval(0.95));
        }
    }

    /** Sets that went through whole, and then one that failed whole: no number breaks, and the next is widely open. */
    @Test
    void setsThatContradictEachOther_areStillForecast() {
        var passages = new ArrayList<Passage>();
        for (int i = 0; i < 6; i++) {
            passages.add(finished(i, i < 5 ? 4000 : 0));
        }
        passages.add(waiting(6, Map.of(Species.PHEASANT, 540)));
        var chicks = Forecaster.of(passages, SpeciesProfile::of).total();
        assertTrue(Double.isFinite(chicks.mean()), chicks::toString);
        var range = chicks.interval(0.95);
        assertTrue(range.high() - range.low() > 100, range.toString());
    }

    /** Chukar keep to the chukar's figures although pheasant eggs lie beside them, and hatch in a week of their own. */
    @Test
    void setOfTwoSpecies_isForecastEachByItsOwnFigures() {
        var both = waiting(0, Map.of(Species.PHEASANT, 540, Species.CHUKAR, 108));
        var forecast = Forecaster.of(List.of(both), SpeciesProfile::of);
        var pheasant = Forecaster.of(List.of(waiting(0, Map.of(Species.PHEASANT, 540))), SpeciesProfile::of);
        var chukar = Forecaster.of(List.of(waiting(0, Map.of(Species.CHUKAR, 108))), SpeciesProfile::of);
        assertEquals(
                pheasant.total().mean() + chukar.total().mean(),
                forecast.total().mean(),
                0.02 * 648);
        assertEquals(
                List.of(Species.PHEASANT, Species.CHUKAR).stream().sorted().toList(),
                forecast.weeks().stream().map(WeekForecast::species).sorted().toList());
        assertEquals(1, forecast.sets().size());
        assertEquals(648, forecast.sets().getFirst().eggsIn());
    }

    /** Both lie in one machine in one week: where one does well the other is likelier to, and the whole is less sure. */
    @Test
    void setOfTwoSpecies_isLessSureThanItsSpeciesApart() {
        var forecast = Forecaster.of(
                List.of(finished(0, 3200), waiting(1, Map.of(Species.PHEASANT, 270, Species.CHUKAR, 270))),
                SpeciesProfile::of);
        double apart = forecast.weeks().stream()
                .mapToDouble(week -> week.chicks().variance())
                .sum();
        assertEquals(2, forecast.weeks().size());
        assertTrue(forecast.total().variance() > 1.02 * apart, forecast.total().variance() + " against " + apart);
    }

    /** A species' forecast with its range does not hang on the hour: the same book, the same answer. */
    @Test
    void sameBook_givesTheSameAnswer() {
        var passages = List.of(finished(0, 3000), waiting(4, Map.of(Species.PHEASANT, 540)));
        var once = Forecaster.of(passages, SpeciesProfile::of).total();
        var again = Forecaster.of(passages, SpeciesProfile::of).total();
        assertEquals(once.mean(), again.mean());
        assertEquals(once.interval(0.8), again.interval(0.8));
    }

    private static SetName name(int week) {
        return new SetName("27-" + (week + 1));
    }

    private static Passage finished(int week, int through) {
        var looked = List.of(new Came(name(week), Species.PHEASANT, 4000, through, 80, 0, 8, Map.of()));
        var hatched = through == 0
                ? List.<Came>of()
                : List.of(new Came(name(week), Species.PHEASANT, through, through, 80, 8, 25, Map.of()));
        return new Passage(
                name(week),
                Species.PHEASANT,
                FIRST.plusWeeks(week),
                Map.of(StageKind.SET_TO_FIRST_LOOK, looked, StageKind.LAST_LOOK_TO_CHICK, hatched),
                List.of(),
                0,
                Passage.Progress.FINISHED,
                through,
                4000);
    }

    private static Passage waiting(int week, Map<Species, Integer> eggs) {
        var groups = new ArrayList<Passage.Waiting>();
        eggs.forEach((species, many) -> groups.add(new Passage.Waiting(species, many, many / 54, 0, Map.of())));
        return new Passage(
                name(week),
                Species.PHEASANT,
                FIRST.plusWeeks(week),
                Map.of(),
                groups,
                0,
                Passage.Progress.RUNNING,
                0,
                eggs.values().stream().mapToInt(Integer::intValue).sum());
    }
}
