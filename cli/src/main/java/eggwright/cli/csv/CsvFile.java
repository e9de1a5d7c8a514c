package eggwright.cli.csv;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import eggwright.cli.voice.Refused;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A CSV file with a header, separated by comma, semicolon or tab, in UTF-8 with or without its mark. Read as it goes, so
 * that its length does not matter.
 */
public record CsvFile(Path file) {
    private static final int LONGEST_HEADER = 10_000;
    private static final int LONGEST_SHOWN = 40;
    private static final int MOST_NAMED = 20;

    /**
     * Hands the rows over, the header first.
     *
     * @throws Refused if the file cannot be read
     */
    public void read(Consumer<Iterator<CsvRecord>> reader) {
        try (var text = Files.newBufferedReader(file, StandardCharsets.UTF_8);
                var csv = CsvReader.builder()
                        .fieldSeparator(separator(text))
                        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .ofCsvRecord(text)) {
            reader.accept(csv.iterator());
        } catch (IOException unread) {
            throw refused(why(unread));
        } catch (UncheckedIOException unread) {
            throw refused(why(unread.getCause()));
        } catch (CsvParseException unread) {
            throw refused("could not be read: " + unread.getMessage() + ".");
        }
    }

    /** A refusal of the file: its name, what is wrong with it, and that nothing was done. */
    public Refused refused(String what) {
        return new Refused(file + " " + what + " Nothing was worked out.");
    }

    /** What stands in a cell, cut where it would fill the screen. */
    public static String shortened(String cell) {
        return cell.length() > LONGEST_SHOWN ? cell.substring(0, LONGEST_SHOWN) + "…" : cell;
    }

    /** Names after each other, the first few where there are many. */
    static String shortenedList(List<String> names) {
        return names.stream().limit(MOST_NAMED).map(CsvFile::shortened).collect(Collectors.joining(", "))
                + (names.size() > MOST_NAMED ? " and " + (names.size() - MOST_NAMED) + " more" : "");
    }

    private static String why(@Nullable Throwable unread) {
        return switch (unread) {
            case NoSuchFileException missing -> "is not there. Name a file that is.";
            case CharacterCodingException binary ->
                "is not text in UTF-8. Save it as CSV, UTF-8, then run the command again.";
            case null, default -> "could not be read: " + unread + ".";
        };
    }

    /** The separator that the header uses most; steps over a byte order mark. */
    private static char separator(BufferedReader text) throws IOException {
        text.mark(1);
        if (text.read() != '\uFEFF') {
            text.reset();
        }
        text.mark(LONGEST_HEADER);
        var header = new StringBuilder();
        for (int c = text.read(); c >= 0 && c != '\n' && c != '\r'; c = text.read()) {
            header.append((char) c);
            if (header.length() == LONGEST_HEADER - 1) {
                break;
            }
        }
        text.reset();
        return Stream.of(',', ';', '\t')
                .max(Comparator.comparingLong(
                        separator -> header.chars().filter(c -> c == separator).count()))
                .orElseThrow();
    }
}
