package eggwright.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Runs what a person would run, with no one listening, so that the JVM can note which classes a start needs. The
 * {@code eggwright} script keeps that note and starts quicker with it.
 */
public final class Rehearsal {
    private Rehearsal() {}

    /**
     * Runs the part of the programme named by the first argument, on the book in the folder named by the second. The
     * folder is a throw-away one.
     */
    public static void main(String[] arguments) {
        var nobody = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        for (var words : programme(arguments[0], arguments[1])) {
            Main.run(nobody, nobody, words.toArray(String[]::new));
        }
    }

    private static List<List<String>> programme(String part, String data) {
        return switch (part) {
            case "today" ->
                List.of(
                        List.of("today", "--data", data),
                        List.of("today", "--at", "2027-05-10T12:00-05:00", "--data", data),
                        List.of("today", "--at", "2027-05-10T12:00-05:00", "--json", "--data", data));
            case "short" ->
                List.of(
                        List.of("--help"),
                        List.of("calc", "interval", "--successes", "51", "--trials", "54", "--json"),
                        List.of("calc", "predict", "--trials", "54", "--alpha", "40", "--beta", "8"),
                        List.of("calc", "dates", "--species", "pheasant", "--set", "2027-04-05T08:00-05:00"),
                        List.of("calc", "species", "pheasant"),
                        List.of("report", "--by", "pen", "--data", data),
                        List.of("forecast", "--as-of", "2027-05-03T12:00-05:00", "--data", data),
                        List.of("verify", "--data", data));
            default -> List.of(List.of("--help"));
        };
    }
}
