package eggwright.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.book.entry.Finding;
import eggwright.book.entry.RejectReason;
import eggwright.trade.BreakOutClass;
import org.junit.jupiter.api.Test;

class WordsTest {
    @Test
    void words_areThoseThatTheTermsHaveThemselves() {
        for (var finding : Finding.values()) {
            assertEquals(finding.word(), Words.of(finding));
        }
        for (var reason : RejectReason.values()) {
            assertEquals(reason.word(), Words.of(reason));
        }
        for (var what : BreakOutClass.values()) {
            assertEquals(what.word(), Words.of(what));
        }
    }
}
