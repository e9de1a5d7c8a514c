package eggwright.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import eggwright.book.entry.Entry;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Origin;
import eggwright.book.entry.Payload;
import eggwright.book.entry.PayloadKinds;
import eggwright.book.name.DeviceName;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.name.PersonName;
import eggwright.invented.season.Season;
import eggwright.invented.truth.Truth;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RoundTripTest {
    private static final long SEED = 20270413;
    private static final int ENTRIES_OF_A_KIND = 200;

    static Stream<String> kinds() {
        return new TreeSet<>(PayloadKinds.words()).stream();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void anyEntry_comesBackEqual_andItsTextIsStable(String kind) {
        var random = new SplittableRandom(SEED + kind.hashCode());
        var any = new AnyPayload(random);
        for (int i = 0; i < ENTRIES_OF_A_KIND; i++) {
            var entry = entry(any, any.of(kind), random);
            var written = EntryCodec.write(entry);
            assertEquals(new ReadEntry.Whole(entry), EntryCodec.read(written), () -> "seed " + SEED + ": " + written);
            var read = assertInstanceOf(ReadEntry.Whole.class, EntryCodec.read(written));
            assertEquals(written, EntryCodec.write(read.entry()));
            var line = BookLines.write(new Kept(entry, Instant.ofEpochSecond(i), Duration.ofMillis(-i)), written);
            assertEquals(
                    new BookLines.Line.Whole(new Kept(entry, Instant.ofEpochSecond(i), Duration.ofMillis(-i)), written),
                    BookLines.read(line));
            assertEquals(1, line.lines().count());
        }
    }

    private static Entry entry(AnyPayload any, Payload payload, SplittableRandom random) {
        return new Entry(
                EntryId.of(random.nextLong(1L << 47), random.nextLong(), random.nextLong()),
                new FarmId("farm-3f2a91c0"),
                any.instant(),
                any.instant(),
                new PersonName("Wren 🪶"),
                new DeviceName("phone \"2\""),
                random.nextBoolean() ? Origin.NOTED : Origin.IMPORTED,
                payload,
                EntryCodec.version(payload));
    }

    @Test
    void everyEntryOfASeason_comesBackTheSame() {
        for (var kept : Season.of(Truth.PLAIN, 7, LocalDate.of(2027, 3, 22)).entries()) {
            var written = EntryCodec.write(kept.entry());
            var read = assertInstanceOf(ReadEntry.Whole.class, EntryCodec.read(written), written);
            assertEquals(kept.entry().payload(), read.entry().payload());
            assertEquals(kept.entry().happened(), read.entry().happened());
            assertEquals(kept.entry().who(), read.entry().who());
            assertEquals(written, EntryCodec.write(read.entry()));
        }
    }
}
