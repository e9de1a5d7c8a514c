package eggwright.trade.cause;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;

class DiagnosisTableTest {
    @Test
    void everyCause_hasSomethingToCheckAndToDo_andASource() {
        assertEquals(72, DiagnosisTable.all().size());
        for (var line : DiagnosisTable.all()) {
            assertFalse(line.sign().isBlank());
            assertFalse(line.stage().isBlank(), line.sign());
            assertFalse(line.probableCause().isBlank(), line.sign());
            assertFalse(line.check().isBlank(), line.sign());
            assertFalse(line.action().isBlank(), line.sign());
            assertFalse(line.sources().isEmpty(), line.sign());
        }
    }
}
