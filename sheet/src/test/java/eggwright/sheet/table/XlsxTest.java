package eggwright.sheet.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.sheet.problem.Problem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;

class XlsxTest {
    static byte[] workbook(Consumer<Worksheet> filling) {
        var out = new ByteArrayOutputStream();
        try (var book = new Workbook(out, "test", "1.0")) {
            filling.accept(book.newWorksheet("Season"));
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
        return out.toByteArray();
    }

    private static Table read(byte[] bytes) {
        var read = TableReader.read(bytes, "season.xlsx");
        return assertInstanceOf(TableRead.Read.class, read, read.toString()).table();
    }

    private static String said(byte[] bytes) {
        return assertInstanceOf(TableRead.Refused.class, TableReader.read(bytes, "season.xlsx")).problems().stream()
                .map(Problem::words)
                .toList()
                .getFirst();
    }

    @Test
    void cells_readAsAPersonSeesThem() {
        var table = read(workbook(sheet -> {
            sheet.value(0, 0, "set");
            sheet.value(0, 1, " set_on ");
            sheet.value(0, 2, "eggs");
            sheet.value(0, 3, "doubtful");
            sheet.value(2, 0, 14);
            sheet.value(2, 1, LocalDate.of(2027, 4, 5));
            sheet.style(2, 1).format("dd.mm.yyyy").set();
            sheet.value(2, 2, 54.0);
            sheet.value(2, 3, 12.5);
        }));
        assertEquals(List.of("set", "set_on", "eggs", "doubtful"), table.header());
        assertEquals(1, table.rows().size());
        assertEquals(3, table.rows().getFirst().number());
        assertEquals(
                List.of("14", "2027-04-05", "54", "12.5"),
                table.rows().getFirst().cells().stream().map(Cell::shown).toList());
    }

    @Test
    void formulas_areSaidToBe_whateverTheyCameTo() {
        var table = read(workbook(sheet -> {
            sheet.value(0, 0, "eggs");
            sheet.formula(1, 0, "20+34");
        }));
        assertEquals(new Cell.Formula("=20+34"), table.rows().getFirst().cells().getFirst());
    }

    @Test
    void formula_inTheHeader_isRefused() {
        assertEquals(
                "season.xlsx, row 1, column \"A\": \"=B1\" is a formula. Write the column's name itself.",
                said(workbook(sheet -> sheet.formula(0, 0, "B1"))));
    }

    /** A workbook written by hand, as other programs write them. */
    static byte[] byHand(String rows) {
        var out = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(out)) {
            part(zip, "[Content_Types].xml", """
                    <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">\
                    <Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>\
                    <Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/></Types>""");
            part(zip, "_rels/.rels", """
                    <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">\
                    <Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="xl/workbook.xml"/></Relationships>""");
            part(zip, "xl/workbook.xml", """
                    <workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">\
                    <sheets><sheet name="S" sheetId="1" r:id="rId1"/></sheets></workbook>""");
            part(zip, "xl/_rels/workbook.xml.rels", """
                    <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">\
                    <Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/></Relationships>""");
            part(
                    zip,
                    "xl/worksheets/sheet1.xml",
                    "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>" + rows
                            + "</sheetData></worksheet>");
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
        return out.toByteArray();
    }

    private static void part(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static final String HEADER = "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>eggs</t></is></c></row>";

    @Test
    void sharedFormulas_failedOnes_andTexts_areTold() {
        var table = read(byHand(HEADER
                + "<row r=\"2\"><c r=\"A2\"><f t=\"shared\" ref=\"A2:A3\" si=\"0\">1+1</f><v>2</v></c></row>"
                + "<row r=\"3\"><c r=\"A3\"><f t=\"shared\" si=\"0\"/><v>2</v></c></row>"
                + "<row r=\"4\"><c r=\"A4\" t=\"e\"><v>#REF!</v></c></row>"
                + "<row r=\"5\"><c r=\"A5\" t=\"str\"><f>\"a\"</f><v>a</v></c></row>"
                + "<row r=\"6\"><c r=\"A6\"><v>1E999999999</v></c></row>"
                + "<row r=\"7\"><c r=\"A7\"><v>5.4E1</v></c></row>"));
        var cells = table.rows().stream().map(r -> r.cells().getFirst()).toList();
        assertInstanceOf(Cell.Formula.class, cells.get(0));
        assertInstanceOf(Cell.Formula.class, cells.get(1));
        assertEquals(new Cell.Faulty("#REF!"), cells.get(2));
        assertInstanceOf(Cell.Formula.class, cells.get(3));
        assertEquals(new Cell.Text("1E999999999"), cells.get(4));
        assertEquals(new Cell.Text("54"), cells.get(5));
    }

    @Test
    void cellNames_thatNoSheetHas_areRefused_beforeTheyFillTheMemory() {
        assertTrue(said(byHand(HEADER + "<row r=\"2\"><c r=\"ZZZZZZ2\"><v>1</v></c></row>"))
                .startsWith("season.xlsx is no whole Excel workbook"));
    }

    @Test
    void entities_areNotFollowed() {
        var bytes = byHand(HEADER + "<row r=\"2\"><c r=\"A2\" t=\"inlineStr\"><is><t>&name;</t></is></c></row>");
        var read = TableReader.read(bytes, "season.xlsx");
        assertTrue(!read.toString().contains("root:"), read.toString());
    }

    @Test
    void workbookThatUnfoldsWithoutEnd_isRefused() {
        assertEquals(
                "season.xlsx unfolds to more than 300 MB. Leave out other sheets, or save the table as CSV.",
                said(byHand(HEADER + " ".repeat(301_000_000))));
    }

    @Test
    void truncatedWorkbook_isRefused_whereverItEnds() {
        var whole = workbook(sheet -> {
            for (int r = 0; r < 50; r++) {
                sheet.value(r, 0, "eggs " + r);
                sheet.value(r, 1, "tray " + r);
            }
        });
        for (int length = 4; length < whole.length; length += 97) {
            assertEquals(
                    "season.xlsx is no whole Excel workbook: it is cut short, damaged or locked by a password. Copy it again,"
                            + " or open it and save it once more as .xlsx or CSV.",
                    said(Arrays.copyOf(whole, length)),
                    "cut at " + length);
        }
    }
}
