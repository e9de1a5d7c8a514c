package eggwright.sheet.table;

import eggwright.sheet.problem.Problem;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Reads a spreadsheet: CSV (comma, semicolon or tab; UTF-8 with or without mark; any line ending) or XLSX, its first
 * sheet. What a file is decides its content, which its name may not contradict. Whatever the bytes, the answer is a table
 * or a refusal.
 */
public final class TableReader {
    /** Ten seasons of a large farm are some 2 MB. Larger files are refused before they are read. */
    public static final int MOST_BYTES = 20_000_000;

    /** Rows of one table, the header among them. */
    public static final int MOST_ROWS = 100_000;

    /** Columns of one table. */
    public static final int MOST_COLUMNS = 250;

    private TableReader() {}

    public static TableRead read(Path path) {
        var name = path.getFileName() == null
                ? path.toString()
                : path.getFileName().toString();
        try {
            if (Files.isDirectory(path)) {
                return refused(name, "is a folder", "Name a file in it.");
            }
            if (Files.size(path) > MOST_BYTES) {
                return tooLarge(name, Files.size(path));
            }
            try (var in = Files.newInputStream(path)) {
                return read(in.readNBytes(MOST_BYTES + 1), name);
            }
        } catch (NoSuchFileException missing) {
            return refused(name, "is not there", "Name a file that is.");
        } catch (AccessDeniedException closed) {
            return refused(name, "may not be read by you", "Change its permissions, or copy it to your own folder.");
        } catch (IOException unread) {
            return refused(name, "could not be read: " + unread.getMessage(), "Copy it to this machine and try again.");
        }
    }

    /**
     * Reads bytes that came without a file, as from a page.
     *
     * @param name the file's name, with its ending
     */
    public static TableRead read(byte[] bytes, String name) {
        if (bytes.length > MOST_BYTES) {
            return tooLarge(name, bytes.length);
        }
        if (bytes.length == 0) {
            return refused(name, "is empty", "Its first row names the columns.");
        }
        var ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return switch (Signature.of(bytes)) {
            case ZIP ->
                ending.equals("csv") || ending.equals("tsv") || ending.equals("txt")
                        ? refused(
                                name,
                                "is called ." + ending + " but is no text",
                                "If it is an Excel workbook, call it .xlsx; otherwise save the table as CSV.")
                        : XlsxTables.read(bytes, name);
            case OLD_OFFICE ->
                refused(name, "is a workbook of the old kind (.xls)", "Open it and save it as .xlsx or as CSV.");
            case UTF_16 -> refused(name, "is text in UTF-16", "Save it as CSV in UTF-8.");
            case OTHER ->
                ending.equals("xlsx") || ending.equals("xlsm")
                        ? refused(
                                name,
                                "is called ." + ending + " but is no Excel workbook, or its beginning is damaged",
                                "Save it once more as .xlsx, or as CSV.")
                        : CsvTables.read(bytes, name);
        };
    }

    static TableRead refused(String name, String what, String right) {
        return TableRead.Refused.of(Problem.ofFile(name, what, right));
    }

    private static TableRead tooLarge(String name, long bytes) {
        return refused(
                name,
                "has " + (bytes + 999_999) / 1_000_000 + " MB; the most is " + MOST_BYTES / 1_000_000 + " MB",
                "Leave out other sheets and pictures, or split it by season.");
    }
}
