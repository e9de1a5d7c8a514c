package eggwright.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Payload;
import eggwright.book.entry.PayloadKinds;
import eggwright.book.entry.Scope;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Kept files of every kind and version. One that no longer reads, or is written otherwise, means that books on farms are
 * read otherwise: give the kind a new version, keep the file.
 */
class SamplesTest {
    static Stream<Payload> samples() {
        return Samples.all().stream();
    }

    @Test
    void everyKind_hasASample() {
        assertEquals(
                new TreeSet<>(PayloadKinds.words()),
                samples().map(Payload::kindWord).collect(Collectors.toCollection(TreeSet::new)));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void sample_isWrittenAsTheKeptFile_andReadBack(Payload payload) {
        var kept = file(payload.kindWord() + ".v" + EntryCodec.version(payload) + ".json");
        assertEquals(kept, EntryCodec.write(Samples.entry(payload)));
        assertEquals(new ReadEntry.Whole(Samples.entry(payload)), EntryCodec.read(kept));
    }

    @Test
    void look_ofVersionOne_isReadUpwards() {
        var read = assertInstanceOf(ReadEntry.Whole.class, EntryCodec.read(file("looked.v1.json")));
        assertEquals(
                new Looked(
                        Scope.ofLoad(new SetName("27-14"), new TrayName("7")),
                        null,
                        null,
                        List.of(FindingCount.removed(Finding.CLEAR, 5), FindingCount.removed(Finding.DEAD, 1)),
                        0,
                        null),
                read.entry().payload());
        assertEquals(1, read.entry().payloadVersion());
    }

    @Test
    void everyOlderVersion_hasAKeptFile() {
        for (var kind : PayloadKinds.words()) {
            for (int version = 1; version <= Upcasts.current(kind); version++) {
                assertInstanceOf(ReadEntry.Whole.class, EntryCodec.read(file(kind + ".v" + version + ".json")));
            }
        }
    }

    private static String file(String name) {
        try (var kept = Objects.requireNonNull(SamplesTest.class.getResourceAsStream("samples/" + name), name)) {
            return new String(kept.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException broken) {
            throw new AssertionError(broken);
        }
    }
}
