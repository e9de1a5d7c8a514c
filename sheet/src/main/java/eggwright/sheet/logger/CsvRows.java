package eggwright.sheet.logger;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import eggwright.sheet.problem.Problem;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import org.jspecify.annotations.Nullable;

/** Rows of a CSV file: comma, semicolon or tab; UTF-8 with or without mark, or UTF-16 with one. */
final class CsvRows implements LoggerRows {
    private static final int LOOKED_AT = 65_536;
    private static final int MARK = 0xFEFF;
    private static final int TURNED_MARK = 0xFFFE;

    private final String file;
    private final InputStreamReader reader;
    private final CsvReader<CsvRecord> csv;
    private final Iterator<CsvRecord> records;
    private int number;
    private @Nullable Problem fault;

    private CsvRows(String file, InputStreamReader reader, CsvReader<CsvRecord> csv) {
        this.file = file;
        this.reader = reader;
        this.csv = csv;
        this.records = csv.iterator();
    }

    static CsvRows of(InputStream plain, String file) throws IOException {
        var in = new BufferedInputStream(plain, LOOKED_AT);
        in.mark(LOOKED_AT + 1);
        var head = in.readNBytes(LOOKED_AT);
        in.reset();
        var charset = charset(head);
        var reader = new InputStreamReader(
                in,
                charset.newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT));
        if (head.length > 2
                && charset.equals(StandardCharsets.UTF_8)
                && (head[0] & 0xFF) == 0xEF
                && reader.read() != MARK) {
            throw new IOException("a mark that is none");
        }
        var csv = CsvReader.builder()
                .fieldSeparator(separator(new String(head, charset)))
                .skipEmptyLines(false)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(reader);
        return new CsvRows(file, reader, csv);
    }

    private static Charset charset(byte[] head) {
        int first = head.length > 1 ? ((head[0] & 0xFF) << 8) | (head[1] & 0xFF) : 0;
        return first == MARK || first == TURNED_MARK ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
    }

    /** Whichever stands most often in the whole lines of the beginning: a logger may write titles above its table. */
    private static char separator(String text) {
        int commas = 0;
        int semicolons = 0;
        int tabs = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            commas += c == ',' ? 1 : 0;
            semicolons += c == ';' ? 1 : 0;
            tabs += c == '\t' ? 1 : 0;
        }
        // With decimal commas there are as many commas as semicolons, or more.
        boolean isSemicolon = semicolons > 0 && semicolons * 3 >= commas;
        return tabs > 0 && tabs * 3 >= commas && tabs >= semicolons ? '\t' : isSemicolon ? ';' : ',';
    }

    @Override
    public @Nullable Row next() {
        if (fault != null) {
            return null;
        }
        try {
            if (!records.hasNext()) {
                return null;
            }
            var record = records.next();
            number++;
            var cells = new ArrayList<String>(record.getFieldCount());
            for (int i = 0; i < record.getFieldCount(); i++) {
                cells.add(record.getField(i).strip());
            }
            return new Row(number, cells);
        } catch (CsvParseException | UncheckedIOException unread) {
            fault = fault(unread);
            return null;
        }
    }

    private Problem fault(RuntimeException unread) {
        if (unread.getCause() instanceof CharacterCodingException
                || (unread.getCause() != null && unread.getCause().getCause() instanceof CharacterCodingException)) {
            return new Problem(
                    file,
                    number + 1,
                    null,
                    null,
                    "or a row soon after it holds a letter that is not written in UTF-8",
                    "Save the file as CSV in UTF-8.");
        }
        return new Problem(
                file,
                number + 1,
                null,
                null,
                "could not be read as cells",
                "Write a quotation mark inside a cell twice, and the cell in quotation marks.");
    }

    @Override
    public @Nullable Problem fault() {
        return fault;
    }

    @Override
    public void close() {
        try {
            csv.close();
            reader.close();
        } catch (IOException left) {
            throw new UncheckedIOException(left);
        }
    }
}
