package eggwright.forecast.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.forecast.record.Forecasted.Moment;
import eggwright.invented.TruthDeck;
import eggwright.invented.truth.Truth;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * The large run, on request: writes the tables of docs/models/forecast-calibration.md to target/forecast-calibration.md.
 * It fails where a moment over all sets of seasons inside the family does not hold as often as it says.
 */
@EnabledIfSystemProperty(named = CalibrationRunTest.SEASONS, matches = "[1-9]\\d*")
class CalibrationRunTest {
    static final String SEASONS = "eggwright.calibration.seasons";
    private static final String OUTSIDE = "eggwright.calibration.outside";
    private static final String SEED = "eggwright.calibration.seed";

    private record Part(String words, int from, int to) {
        boolean has(Judged.One one) {
            return one.number() >= from && one.number() <= to;
        }
    }

    private static final List<Part> PARTS = List.of(
            new Part("all", 1, 99), new Part("1 to 4", 1, 4), new Part("5 to 8", 5, 8), new Part("9 on", 9, 99));

    @Test
    void ranges_holdAsOftenAsTheySay_overManySeasons() throws IOException {
        long seed = Long.getLong(SEED, 2026);
        int inside = Integer.getInteger(SEASONS, 0);
        int outside = Integer.getInteger(OUTSIDE, 0);
        var seasons = judged(TruthDeck.varied(seed, inside), seed);
        var text = new StringBuilder();
        text.append("**Inside the family**, ")
                .append(inside)
                .append(" seasons\n\n")
                .append(table(seasons));
        if (outside > 0) {
            var odd = judged(TruthDeck.outside(seed, outside), seed);
            text.append("\n**Outside the family**, ")
                    .append(outside)
                    .append(" seasons\n\n")
                    .append(table(odd));
        }
        Files.writeString(Path.of("target", "forecast-calibration.md"), text);
        var missed = new ArrayList<String>();
        for (var moment : Moment.values()) {
            for (double level : List.of(0.8, 0.95)) {
                var held = Judged.held(seasons, Judged.at(moment), level);
                if (!held.asOftenAs(level)) {
                    missed.add(moment + " at " + level + ": " + held);
                }
            }
        }
        assertEquals(List.of(), missed);
    }

    /** Seasons are worked out on as many processors as there are; which one does which changes nothing. */
    private static List<Judged> judged(List<Truth> deck, long seed) {
        return IntStream.range(0, deck.size())
                .parallel()
                .mapToObj(i -> Judged.all(deck.get(i), seed + i))
                .toList();
    }

    private static String table(List<Judged> seasons) {
        var text = new StringBuilder("""
                | moment | sets | 80 %: held ± two errors (plain) | 95 %: held ± two errors (plain) | forecasts |
                |---|---|---|---|---|
                """);
        for (var moment : Moment.values()) {
            for (var part : PARTS) {
                Predicate<Judged.One> here =
                        one -> part.has(one) && Judged.at(moment).test(one);
                text.append("| ")
                        .append(moment.word().replace('_', ' '))
                        .append(" | ")
                        .append(part.words())
                        .append(" | ")
                        .append(cell(Judged.held(seasons, here, 0.8), 0.8))
                        .append(" | ")
                        .append(cell(Judged.held(seasons, here, 0.95), 0.95))
                        .append(" | ")
                        .append(Judged.held(seasons, here, 0.8).forecasts())
                        .append(" |\n");
            }
        }
        return text.toString();
    }

    private static String cell(Judged.Held held, double level) {
        return String.format(
                Locale.ROOT,
                "%s%.1f ± %.1f (%.1f)",
                held.asOftenAs(level) ? "" : "✗ ",
                held.pct(),
                held.twoErrors(),
                held.plainPct());
    }
}
