package eggwright.trade.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CsvTableTest {
    /** Quoting: RFC 4180, section 2, rules 5 to 7. */
    @Test
    void table_readsQuotedCells_andLeavesOutEmptyOnes() {
        var table = CsvTable.of("sign,cause\r\n\"late, \"\"wet\"\"\",\n\"two\nlines\",damp");
        assertEquals(
                List.of(Map.of("sign", "late, \"wet\""), Map.of("sign", "two\nlines", "cause", "damp")), table.rows());
    }

    @Test
    void table_namesTheRow_whenACellIsMissing() {
        var fault = assertThrows(IllegalStateException.class, () -> CsvTable.of("a,b\n1,2\n3\n"));
        assertEquals("Row 3 has 1 cells, not 2: [3]", fault.getMessage());
    }

    @Test
    void table_isNamed_whenTheProgramWasPackedWithoutIt() {
        assertThrows(IllegalStateException.class, () -> CsvTable.beside(CsvTableTest.class, "nowhere.csv"));
    }
}
