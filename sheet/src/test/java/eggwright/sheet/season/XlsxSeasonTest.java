package eggwright.sheet.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import eggwright.sheet.table.TableRead;
import eggwright.sheet.table.TableReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;

class XlsxSeasonTest {
    private final Seasons farm = new Seasons();

    private static eggwright.sheet.table.Table workbook(Consumer<Worksheet> more) throws IOException {
        var out = new ByteArrayOutputStream();
        try (var book = new Workbook(out, "test", "1.0")) {
            var sheet = book.newWorksheet("2027");
            var header = List.of("set", "set_on", "species", "tray", "eggs", "saleable", "hatched_on");
            for (int i = 0; i < header.size(); i++) {
                sheet.value(0, i, header.get(i));
            }
            sheet.value(1, 0, 14);
            date(sheet, 1, LocalDate.of(2027, 4, 5));
            sheet.value(1, 2, "pheasant");
            sheet.value(1, 3, 7);
            sheet.value(1, 4, 54);
            sheet.value(1, 5, 40);
            date(sheet, 6, LocalDate.of(2027, 4, 29));
            more.accept(sheet);
        }
        return assertInstanceOf(TableRead.Read.class, TableReader.read(out.toByteArray(), "season.xlsx"))
                .table();
    }

    private static void date(Worksheet sheet, int column, LocalDate date) {
        sheet.value(1, column, date);
        sheet.style(1, column).format("d mmm yyyy").set();
    }

    @Test
    void workbook_givesTheSameEntriesAsItsText() throws IOException {
        var fromText =
                new Seasons().keep(Seasons.SHORT + ",hatched_on,saleable", "14,2027-04-05,pheasant,7,54,2027-04-29,40");
        assertEquals(fromText.offered(), farm.keep(workbook(sheet -> {})).offered());
    }

    @Test
    void formulaCells_areNamed_eachWithItsPlace() throws IOException {
        var table = workbook(sheet -> {
            sheet.formula(1, 4, "SUM(F2:F2)+14");
            sheet.formula(1, 1, "TODAY()");
        });
        var refused = assertInstanceOf(SeasonRead.Refused.class, SeasonImport.read(table, Seasons.FARM, List.of()));
        assertEquals(
                List.of(
                        "season.xlsx, row 2, column \"set_on\": \"=TODAY()\" is a formula. Write the date itself.",
                        "season.xlsx, row 2, column \"eggs\": \"=SUM(F2:F2)+14\" is a formula. Write the number itself."),
                refused.problems().stream().map(p -> p.words()).toList());
    }
}
