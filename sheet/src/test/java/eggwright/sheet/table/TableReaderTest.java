package eggwright.sheet.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import eggwright.sheet.problem.Problem;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TableReaderTest {
    @TempDir
    private Path folder;

    private static Table read(String text) {
        return assertInstanceOf(
                        TableRead.Read.class, TableReader.read(text.getBytes(StandardCharsets.UTF_8), "season.csv"))
                .table();
    }

    private static List<String> words(TableRead read) {
        return assertInstanceOf(TableRead.Refused.class, read).problems().stream()
                .map(Problem::words)
                .toList();
    }

    private static String said(byte[] bytes, String name) {
        var words = words(TableReader.read(bytes, name));
        assertEquals(1, words.size(), words.toString());
        return words.getFirst();
    }

    private static String said(String text) {
        return said(text.getBytes(StandardCharsets.UTF_8), "season.csv");
    }

    private static List<String> shown(Table.Row row) {
        return row.cells().stream().map(Cell::shown).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void separator_isFoundInTheHeader(String separator) {
        var table = read("set ,tray\n\"a,b;c\td\", 7 \n"
                .replace(",tray", separator + "tray")
                .replace("\", 7", "\"" + separator + " 7"));
        assertEquals(List.of("set", "tray"), table.header());
        assertEquals(List.of("a,b;c\td", "7"), shown(table.rows().getFirst()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void lineEnding_andMark_doNotMatter(String end) {
        var table = read("\uFEFF" + String.join(end, "set,tray", "1,2", "3,4"));
        assertEquals(List.of("set", "tray"), table.header());
        assertEquals(List.of("3", "4"), shown(table.rows().get(1)));
    }

    @Test
    void rows_areNumberedAsASpreadsheetDoes_blankRowsAndBrokenCellsTaken() {
        var table = read("set,tray\n\n1,\"two\nlines\"\n,\n5,6\n");
        assertEquals(List.of(3, 5), table.rows().stream().map(Table.Row::number).toList());
    }

    @Test
    void quotedCells_keepTheirQuotes_andShortRowsAreFilled() {
        var table = read("set,tray,pen\n\"the \"\"big\"\" one\",2\n");
        assertEquals(List.of("the \"big\" one", "2", ""), shown(table.rows().getFirst()));
    }

    @Test
    void emptyColumns_atTheEnd_areLeftOut() {
        var table = read("set,tray,,\n1,2,,\n");
        assertEquals(List.of("set", "tray"), table.header());
        assertEquals(List.of("1", "2"), shown(table.rows().getFirst()));
    }

    @Test
    void rowWithMoreCellsThanTheHeader_isRefused() {
        assertEquals(
                "season.csv, row 3: \"5\" stands in column C, beyond the 2 columns of the header. A comma inside a cell"
                        + " needs quotation marks round the cell; a number has no comma.",
                said("set,eggs\n1,2\n1,12,5\n"));
    }

    @Test
    void headerNames_thatRepeatOrLack_areRefused() {
        assertEquals(
                "season.csv, row 1, column \"eggs\": stands twice, as columns B and C. Keep one of them.",
                said("set,eggs,eggs\n1,2,3\n"));
        assertEquals(
                "season.csv, row 1, column \"B\": has no name. Name the column, or take it out.",
                said("set,,eggs\n1,2,3\n"));
    }

    @Test
    void emptyFiles_areRefused() {
        assertEquals("season.csv is empty. Its first row names the columns.", said(""));
        assertEquals("season.csv is empty. Its first row names the columns.", said("\n\n\n"));
        assertEquals("season.csv is empty. Its first row names the columns.", said("\uFEFF"));
        assertEquals("season.csv, row 1: is empty. The first row names the columns.", said("\nset,eggs\n1,2\n"));
        assertEquals("season.csv has a header and no rows below it. Write at least one row.", said("set,eggs\n,\n"));
    }

    @Test
    void openQuotationMark_isRefused() {
        assertEquals(
                "season.csv, row 3: could not be read as cells: a quotation mark is opened and not closed, or stands in the"
                        + " middle of a cell. Write a quotation mark inside a cell twice, and the cell in quotation marks.",
                said("set,eggs\n1,2\n\"1\"x,2\n"));
    }

    @Test
    void letterOfAnotherEncoding_isRefused_withItsRow() {
        assertEquals(
                "season.csv, row 3: holds a letter that is not written in UTF-8. Save the table as CSV in UTF-8, or as XLSX.",
                said("set,eggs\n1,2\nKäfig,3\n".getBytes(StandardCharsets.ISO_8859_1), "season.csv"));
        assertEquals(
                "season.csv is text in UTF-16. Save it as CSV in UTF-8.",
                said("set,eggs\n".getBytes(Charset.forName("UTF-16")), "season.csv"));
    }

    @Test
    void fileCalledCsv_thatIsNone_isRefused() {
        var photograph = new byte[5000];
        new Random(1).nextBytes(photograph);
        photograph[0] = (byte) 0x89;
        photograph[1] = 0;
        assertEquals(
                "season.csv, row 1: holds bytes that no text has. Save the table as CSV or XLSX.",
                said(photograph, "season.csv"));
        assertEquals(
                "season.csv is called .csv but is no text. If it is an Excel workbook, call it .xlsx; otherwise save the"
                        + " table as CSV.",
                said(new byte[] {'P', 'K', 3, 4, 20, 0}, "season.csv"));
        assertEquals(
                "season.xls is a workbook of the old kind (.xls). Open it and save it as .xlsx or as CSV.",
                said(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0}, "season.xls"));
        assertEquals(
                "season.xlsx is called .xlsx but is no Excel workbook, or its beginning is damaged. Save it once more as"
                        + " .xlsx, or as CSV.",
                said("set,eggs\n1,2\n".getBytes(StandardCharsets.UTF_8), "season.xlsx"));
    }

    @Test
    void fileOf200Megabytes_isRefused_beforeItIsRead() throws IOException {
        var large = folder.resolve("large.csv");
        try (var file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(200_000_000);
        }
        assertEquals(
                List.of("large.csv has 200 MB; the most is 20 MB. Leave out other sheets and pictures, or split it by"
                        + " season."),
                words(TableReader.read(large)));
    }

    @Test
    void pathThatIsNoFile_isRefused() {
        assertEquals(
                List.of("none.csv is not there. Name a file that is."),
                words(TableReader.read(folder.resolve("none.csv"))));
        assertEquals(
                List.of(folder.getFileName() + " is a folder. Name a file in it."), words(TableReader.read(folder)));
    }

    @Test
    void file_isReadFromItsPath() throws IOException {
        var file = folder.resolve("season.tsv");
        Files.writeString(file, "set\teggs\n1\t2\n");
        assertEquals(
                "season.tsv",
                assertInstanceOf(TableRead.Read.class, TableReader.read(file))
                        .table()
                        .file());
    }

    @Test
    void tooManyRowsOrColumns_areRefused() {
        assertEquals(
                "season.csv, row 1: names 251 columns; the most is 250. Leave out those that are not needed.",
                said("a,".repeat(250) + "b\n1\n"));
        assertEquals(
                "season.csv, row 100001: is one too many; a table has at most 100000 rows. Split the file by season.",
                said("set\n" + "1\n".repeat(100_001)));
        assertEquals(
                "season.csv, row 1: could not be read as cells: a quotation mark is opened and not closed, or stands in the"
                        + " middle of a cell. Write a quotation mark inside a cell twice, and the cell in quotation marks.",
                said(",".repeat(1_000_000)));
    }
}
