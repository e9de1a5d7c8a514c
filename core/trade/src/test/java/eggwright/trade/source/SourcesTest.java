package eggwright.trade.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class SourcesTest {
    @Test
    void register_hasAReferenceAndAnAddress_forEveryKey() {
        assertEquals(126, Sources.shipped().all().size());
        for (var source : Sources.shipped().all()) {
            assertFalse(source.reference().isBlank(), source.key());
            assertFalse(source.address().isBlank(), source.key());
        }
    }

    @Test
    void register_readsSeveralKeys_andMemory() {
        var sources = Sources.shipped().read("from memory; compare ILL-18");
        assertEquals(
                List.of("from memory", "ILL-18 (seen)"),
                sources.stream().map(Source::words).toList());
    }

    @Test
    void register_refusesAKeyItDoesNotHold() {
        assertThrows(IllegalStateException.class, () -> Sources.shipped().read("NOBODY1900"));
    }
}
