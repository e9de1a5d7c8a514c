package eggwright.sheet.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TableWriterTest {
    @Test
    void table_isWrittenAfterRfc4180_andReadsBack() {
        var rows = List.of(List.of("14", "the \"big\" pen", "a,b"), List.of("15", "two\nlines", ""));
        var text = TableWriter.csv(List.of("set", "pen", "remark"), rows);
        assertEquals("set,pen,remark\n14,\"the \"\"big\"\" pen\",\"a,b\"\n15,\"two\nlines\",\n", text);
        var table = assertInstanceOf(
                        TableRead.Read.class, TableReader.read(text.getBytes(StandardCharsets.UTF_8), "out.csv"))
                .table();
        assertEquals(
                rows,
                table.rows().stream()
                        .map(r -> r.cells().stream().map(Cell::shown).toList())
                        .toList());
    }

    @ParameterizedTest
    @CsvSource({
        "=1+1, '''=1+1'",
        "+cmd, '''+cmd'",
        "-north pen, '''-north pen'",
        "@home, '''@home'",
        "-3.5, -3.5",
        "+4, +4",
        "1e-7, 1e-7",
        "Oak, Oak",
        "a=b, a=b"
    })
    void text_thatASpreadsheetWouldRun_isMadeSafe_andNumbersStay(String text, String written) {
        assertEquals(written, TableWriter.safe(text));
    }
}
