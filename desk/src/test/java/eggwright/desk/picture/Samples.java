package eggwright.desk.picture;

import eggwright.desk.picture.AccountBar.Part;
import eggwright.desk.picture.ForecastBand.Point;
import eggwright.desk.picture.IntervalPlot.Row;
import eggwright.desk.picture.IntervalPlot.Standing;
import eggwright.desk.picture.SeasonChart.Bar;
import eggwright.desk.picture.SeasonChart.State;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** One picture of each kind, from an invented farm. */
public final class Samples {
    private Samples() {}

    public static List<Picture> all() {
        return List.of(account(), intervals(), season(), forecast(), readings());
    }

    static AccountBar account() {
        return new AccountBar(
                "set-14",
                "What became of set 14",
                "Of the 324 eggs of set 14, 218 gave a chick to sell; most were lost in the last days.",
                324,
                324,
                List.of(
                        new Part("clear", 31, Ink.CLEAR),
                        new Part("dead early", 12, Ink.DEAD_EARLY),
                        new Part("dead in the middle", 4, Ink.DEAD_MIDDLE),
                        new Part("dead late", 26, Ink.DEAD_LATE),
                        new Part("pipped, not out", 11, Ink.PIPPED),
                        new Part("rotten or cracked", 3, Ink.SPOILT),
                        new Part("dead in the basket", 2, Ink.IN_BASKET),
                        new Part("culled", 7, Ink.CULLED),
                        new Part("saleable", 218, Ink.SALEABLE),
                        new Part("still in", 0, Ink.STILL_IN),
                        new Part("unaccounted", 10, Ink.UNACCOUNTED)),
                Optional.of(new AccountBar.Expected(
                        "expected by the trade’s first guess",
                        List.of(
                                new AccountBar.Share("clear", 29),
                                new AccountBar.Share("died", 38),
                                new AccountBar.Share("spoilt", 3),
                                new AccountBar.Share("not to sell", 7),
                                new AccountBar.Share("saleable", 247)))),
                "324 set",
                new Numbers(
                        List.of("fate", "eggs", "usual"),
                        List.of(
                                List.of("clear", "31", "29"),
                                List.of("dead early", "12", "13"),
                                List.of("dead late", "26", "12"),
                                List.of("saleable", "218", "247"))));
    }

    static IntervalPlot intervals() {
        return new IntervalPlot(
                "by-pen",
                "Fertility at the lamp, by pen",
                "Pen 6 is below the farm’s usual by more than luck; pen 9 has too few eggs to tell.",
                new IntervalPlot.Scale(40, 100),
                Optional.of(new IntervalPlot.Band("this farm’s usual, 86 to 92 %", 86, 92)),
                List.of(
                        new Row(
                                "Pen 6",
                                "58 of 82, 71 % (60 to 79)",
                                "below the rest, hardly luck (1 in 400)",
                                70.7,
                                60.1,
                                79.4,
                                Standing.BELOW),
                        new Row(
                                "Pen 4",
                                "51 of 54, 94 % (85 to 98)",
                                "could be luck (21 in 100)",
                                94.4,
                                84.9,
                                98.1,
                                Standing.USUAL),
                        new Row(
                                "Pen 5",
                                "73 of 80, 91 % (83 to 96)",
                                "could be luck (100 in 100)",
                                91.3,
                                83.0,
                                95.7,
                                Standing.USUAL),
                        new Row(
                                "Pen 2",
                                "410 of 421, 97 % (95 to 99)",
                                "above the rest, hardly luck (under 1 in 1,000)",
                                97.4,
                                95.4,
                                98.5,
                                Standing.ABOVE),
                        new Row(
                                "Pen 9",
                                "4 of 5, 80 % (38 to 96)",
                                "too few eggs to tell",
                                80.0,
                                37.6,
                                96.4,
                                Standing.TOO_FEW)),
                new Numbers(
                        List.of("pen", "fertile", "of", "percent", "from", "to"),
                        List.of(
                                List.of("6", "58", "82", "70.7", "60.1", "79.4"),
                                List.of("4", "51", "54", "94.4", "84.9", "98.1"))));
    }

    static SeasonChart season() {
        return new SeasonChart(
                "season",
                "Sets of the season",
                "Two sets have hatched, three are in the machines, and one is planned for next week.",
                LocalDate.parse("2027-03-24"),
                LocalDate.parse("2027-07-04"),
                Optional.of(new SeasonChart.Today(LocalDate.parse("2027-05-06"), "today, 6 May")),
                List.of(
                        bar("Set 11, 162 eggs", "2027-03-29", "2027-04-22", State.HATCHED),
                        bar("Set 12, 216 eggs", "2027-04-05", "2027-04-29", State.HATCHED),
                        bar("Set 13, 270 eggs", "2027-04-12", "2027-05-06", State.UNDER_WAY),
                        bar("Set 14, 324 eggs", "2027-04-19", "2027-05-13", State.UNDER_WAY),
                        bar("Set 15, 54 eggs", "2027-05-03", "2027-05-27", State.UNDER_WAY),
                        bar("Set 16, planned", "2027-05-24", "2027-06-17", State.PLANNED)),
                Locale.ENGLISH,
                new Numbers(
                        List.of("set", "set on", "hatches"),
                        List.of(List.of("11", "29 Mar", "22 Apr"), List.of("12", "5 Apr", "29 Apr"))));
    }

    static ForecastBand forecast() {
        return new ForecastBand(
                "set-14-ahead",
                "Chicks to come from set 14",
                "On day 0 between 170 and 262 chicks were foreseen; 218 came.",
                List.of(
                        new Point(0, 150, 178, 232, 262, 280),
                        new Point(8, 178, 198, 236, 256, 268),
                        new Point(14, 190, 206, 234, 252, 262),
                        new Point(21, 204, 214, 228, 240, 248)),
                Optional.of(new ForecastBand.Truth(24, 218, "218 came")),
                "day of the set",
                "saleable chicks",
                new Numbers(
                        List.of("day", "middle", "80 %", "95 %"),
                        List.of(
                                List.of("0", "232", "178 to 262", "150 to 280"),
                                List.of("21", "228", "214 to 240", "204 to 248"))));
    }

    static ClimateChart readings() {
        return new ClimateChart(
                "readings",
                "Temperature in °F",
                "The temperature was 99.4 °F on the whole, from 93.1 to 100.2 °F. For 5 h nothing was read.",
                ClimateChart.Scale.over(93.1, 100.2),
                List.of(new ClimateChart.Tick(20, "04:00"), new ClimateChart.Tick(95, "20:00")),
                List.of(new ClimateChart.Guide(99.5, 99.5, "usual setting"), new ClimateChart.Guide(98, 99, "band")),
                List.of(new ClimateChart.Line(
                        "logger: middle, least and greatest of 5 minutes",
                        List.of(
                                List.of(
                                        new ClimateChart.Stretch(0, 10, 99.2, 99.5, 99.8),
                                        new ClimateChart.Stretch(10, 20, 99.0, 99.4, 100.2)),
                                List.of(new ClimateChart.Stretch(60, 70, 93.1, 95.0, 98.0))))),
                List.of(new ClimateChart.Mark(15, 99.3)),
                List.of(new ClimateChart.Silence(20, 60)),
                new ClimateChart.KeyWords("read by hand", "nothing was read"),
                new Numbers(
                        List.of("when", "sensor", "least", "mean", "greatest"),
                        List.of(List.of("5 May", "logger", "93.1", "99.4", "100.2"))));
    }

    private static Bar bar(String label, String setOn, String hatchOn, State state) {
        return new Bar(label, LocalDate.parse(setOn), LocalDate.parse(hatchOn), state);
    }
}
