package eggwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import eggwright.book.entry.Entry;
import eggwright.book.name.FarmId;
import eggwright.book.store.EntryStore;
import eggwright.book.store.Offered;
import eggwright.book.store.Outcome;
import eggwright.book.store.Refusal;
import eggwright.testkit.contracts.EntryStoreContract;
import eggwright.testkit.contracts.Notes;
import eggwright.testkit.walls.Walls;
import eggwright.wire.BookLines;
import eggwright.wire.EntryCodec;
import eggwright.wire.ReadEntry;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteEntryStoreTest extends EntryStoreContract {
    private static final Instant NOW = Instant.parse("2027-04-13T12:00:00Z");

    @TempDir
    private Path folder;

    @Override
    protected EntryStore fresh() {
        return DataFolder.at(folder).write();
    }

    @Override
    protected EntryStore reopened(EntryStore store) {
        store.close();
        return DataFolder.at(folder).write();
    }

    @Override
    protected String write(Entry entry) {
        return EntryCodec.write(entry);
    }

    private Offered remark(EntryStore store, int number) {
        var entry = Notes.remark(store.farm(), number, "The hens lay well. ".repeat(90));
        return new Offered(entry, write(entry), Duration.ZERO);
    }

    @Test
    void append_saysNotSaved_whenTheDiskIsFull_andGoesOnWhenThereIsRoom() throws Exception {
        try (var store = DataFolder.at(folder).write()) {
            store.append(remark(store, 0), NOW);
            store.writer().alone("pragma max_page_count = 20");
            int number = 1;
            while (store.append(remark(store, number), NOW) instanceof Outcome.Added) {
                number++;
            }
            long kept = store.count();
            assertEquals(number, kept);
            assertEquals(
                    new Outcome.Refused(new Refusal.NotSaved("the disk is full")),
                    store.append(remark(store, number), NOW));
            store.writer().alone("pragma max_page_count = 100000");
            assertInstanceOf(Outcome.Added.class, store.append(remark(store, number), NOW));
            assertEquals(kept + 1, store.count());
            assertEquals(List.of(), Backups.verify(store).faults());
        }
    }

    @Test
    void append_saysNotSaved_whenOpenedForReading() {
        var data = DataFolder.at(folder);
        try (var store = data.write();
                var reader = data.read()) {
            store.append(remark(store, 0), NOW);
            assertEquals(
                    new Outcome.Refused(
                            new Refusal.NotSaved("the book cannot be written: it is read-only, or was moved away")),
                    reader.append(remark(store, 1), NOW));
            assertEquals(1, reader.count());
        }
    }

    @Test
    void reader_seesTheBookAsItWas_whileTheWriterGoesOn() {
        try (var store = DataFolder.at(folder).write()) {
            store.append(remark(store, 0), NOW);
            store.append(remark(store, 1), NOW);
            var seen = new ArrayList<Integer>();
            store.eachWritten((kept, written) -> {
                seen.add(seen.size());
                store.append(remark(store, 10 + seen.size()), NOW);
            });
            assertEquals(2, seen.size());
            assertEquals(4, store.count());
        }
    }

    @Test
    void lookOfAnOlderForm_isTheSameEntry_whenSentAgainInTheNewForm() {
        try (var store = DataFolder.at(folder).write()) {
            var old = """
                    {"id":"01976b2e-7c00-7000-8000-000000000001","farm":"%s","kind":"looked",\
                    "happened":"2027-04-13T19:00-05:00","noted":"2027-04-13T19:01-05:00","who":"Wren","device":"phone",\
                    "origin":"noted","payload_version":1,\
                    "payload":{"scope":{"set":"14","tray":"7"},"removed":{"clear":5}}}""".formatted(store.farm());
            var entry = ((ReadEntry.Whole) EntryCodec.read(old)).entry();
            assertInstanceOf(Outcome.Added.class, store.append(new Offered(entry, old, Duration.ZERO), NOW));
            assertInstanceOf(
                    Outcome.KeptBefore.class,
                    store.append(new Offered(entry, EntryCodec.write(entry), Duration.ZERO), NOW));
        }
    }

    @Test
    void exportedLines_giveTheSameBookAgain_unknownKindsToo() throws Exception {
        var lines = new ArrayList<String>();
        var farm = new FarmId("Fallow End");
        try (var store = DataFolder.at(folder).write(farm)) {
            store.append(remark(store, 0), NOW);
            var strange = write(Notes.remark(farm, 1, "x"))
                    .replace("\"kind\":\"remark\"", "\"kind\" : \"moon-seen\"")
                    .replace("\"text\":\"x\"", "\"phase\":1.50");
            var entry = ((ReadEntry.Whole) EntryCodec.read(strange)).entry();
            store.append(new Offered(entry, strange, Duration.ofMillis(-300)), NOW.plusSeconds(5));
            store.eachWritten((kept, written) -> lines.add(BookLines.write(kept, written)));
        }
        var read = lines.stream()
                .map(line -> assertInstanceOf(BookLines.Line.Whole.class, BookLines.read(line)))
                .toList();
        try (var again = DataFolder.at(folder.resolve("again")).write(farm)) {
            assertInstanceOf(EntryStore.Batch.AllKept.class, again.bringInLines(read));
            var back = new ArrayList<String>();
            again.eachWritten((kept, written) -> back.add(BookLines.write(kept, written)));
            assertEquals(lines, back);
        }
    }

    @Test
    void store_keepsToItsWalls() {
        Walls.ofRoom("eggwright.store").hold();
    }
}
