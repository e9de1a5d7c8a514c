package eggwright.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Comparator;
import java.util.List;

/**
 * Runs what a person would run, with no one listening, so that the JVM can note which classes a start needs. The
 * {@code eggwright} script keeps that note and starts quicker with it.
 */
public final class Rehearsal {
    private Rehearsal() {}

    /** Runs the part of the programme named by the first argument. */
    public static void main(String[] arguments) throws IOException {
        var nobody = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        var folder = Files.createTempDirectory("eggwright-rehearsal");
        try {
            for (var words : programme(arguments.length == 0 ? "short" : arguments[0], folder.toString())) {
                Main.run(nobody, nobody, words.toArray(String[]::new));
            }
        } finally {
            try (var files = Files.walk(folder)) {
                for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.deleteIfExists(file);
                }
            }
        }
    }

    private static List<List<String>> programme(String part, String data) {
        return switch (part) {
            case "short" ->
                List.of(
                        List.of("--help"),
                        List.of("calc", "interval", "--successes", "51", "--trials", "54", "--json"),
                        List.of("calc", "predict", "--trials", "54", "--alpha", "40", "--beta", "8"),
                        List.of("calc", "dates", "--species", "pheasant", "--set", "2027-04-05T08:00-05:00"),
                        List.of("calc", "species", "pheasant"),
                        List.of("simulate", "--seed", "1", "--out", data),
                        List.of("today", "--data", data),
                        List.of("today", "--json", "--data", data),
                        List.of("report", "--by", "pen", "--data", data),
                        List.of("forecast", "--as-of", "2027-05-03T12:00-05:00", "--data", data),
                        List.of("verify", "--data", data));
            default -> List.of(List.of("--help"));
        };
    }
}
