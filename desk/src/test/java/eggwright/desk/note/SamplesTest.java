package eggwright.desk.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import eggwright.desk.words.Words;
import eggwright.wire.EntryCodec;
import eggwright.wire.ReadEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every kind of entry, from the samples that are kept of the wire: what a form shows for mending is what it reads back. */
class SamplesTest {
    private static final Path SAMPLES = Path.of("../wire/src/test/resources/eggwright/wire/samples");
    private static final Words WORDS = Words.beside(EntryForms.class, Locale.ENGLISH);

    @Test
    void everySample_isMendedByItsForm_withoutLosingAnything() throws IOException {
        var forms = new TreeSet<String>();
        EntryForms.all().forEach(f -> forms.add(f.kind()));
        var seen = new TreeSet<String>();
        try (var files = Files.list(SAMPLES)) {
            for (var file : files.sorted().toList()) {
                var entry = assertInstanceOf(
                                ReadEntry.Whole.class,
                                EntryCodec.read(Files.readString(file).strip()),
                                file.toString())
                        .entry();
                var payload = entry.payload();
                var form = EntryForms.of(payload.kindWord());
                if (form.isPresent()) {
                    var zone = ZoneOffset.of(entry.happened().getOffset().getId());
                    var reader = new FormReader(form.get().written(payload, zone), WORDS, zone, pen -> Optional.empty())
                            .mending(form.get().moments(payload));
                    assertEquals(payload, form.get().read(reader), file.toString());
                    assertEquals(List.of(), reader.toMend(), file.toString());
                    seen.add(payload.kindWord());
                }
            }
        }
        assertEquals(forms, seen, "a sample of every kind");
    }
}
