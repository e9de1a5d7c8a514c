package eggwright.cli;

import eggwright.invented.DemoSeason;
import eggwright.store.DataFolder;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;

/**
 * Runs what a person would run, with no one listening, so that the JVM can note which classes a start needs. The
 * {@code eggwright} script keeps that note and starts quicker with it.
 */
public final class Rehearsal {
    private Rehearsal() {}

    /**
     * Runs the part of the programme named by the first argument, on the book in the folder named by the second; the part
     * "book" makes it. The folder is a throw-away one.
     */
    public static void main(String[] arguments) {
        var data = arguments[1];
        if (arguments[0].equals("book")) {
            var season = DemoSeason.of(Instant.now(), ZoneId.systemDefault());
            try (var store = DataFolder.at(Path.of(data)).write(season.farm())) {
                store.bringIn(season.entries());
            }
            return;
        }
        if (arguments[0].equals("desk")) {
            DeskRehearsal.run();
            return;
        }
        var nobody = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        for (var words : programme(arguments[0], data)) {
            Main.run(nobody, nobody, words.toArray(String[]::new));
        }
    }

    private static List<List<String>> programme(String part, String data) {
        return switch (part) {
            case "today" ->
                List.of(
                        // Once from the book, and once from what the first time kept beside it.
                        List.of("today", "--data", data),
                        List.of("today", "--data", data),
                        List.of("today", "--json", "--data", data));
            case "short" ->
                List.of(
                        List.of("--help"),
                        List.of("calc", "interval", "--successes", "51", "--trials", "54", "--json"),
                        List.of("calc", "predict", "--trials", "54", "--alpha", "40", "--beta", "8"),
                        List.of("calc", "dates", "--species", "pheasant", "--set", "2027-04-05T08:00-05:00"),
                        List.of("calc", "species", "pheasant"),
                        List.of("report", "--by", "pen", "--data", data),
                        List.of("forecast", "--data", data),
                        List.of("verify", "--data", data));
            default -> List.of(List.of("--help"));
        };
    }
}
