package eggwright.cli.farm;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.fold.Ledger;
import eggwright.cli.Main;
import eggwright.invented.DemoSeason;
import eggwright.store.DataFolder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept beside a book says what the book says, and is used for nothing else. */
class TodayAsideTest {
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");

    @TempDir
    private Path folder;

    @BeforeEach
    void aBuildWithAName() {
        System.setProperty("eggwright.build", "build-1");
    }

    @AfterEach
    void noName() {
        System.clearProperty("eggwright.build");
    }

    private Path aside() {
        return folder.resolve("today.aside");
    }

    private void book(Instant until) {
        var season = DemoSeason.of(Instant.now(), ZONE);
        try (var store = DataFolder.at(folder).write(season.farm())) {
            store.bringIn(season.entries().stream()
                    .filter(k -> !k.received().isAfter(until))
                    .toList());
        }
    }

    private String today(String... more) {
        var words = new String[more.length + 3];
        words[0] = "today";
        words[1] = "--data";
        words[2] = folder.toString();
        System.arraycopy(more, 0, words, 3, more.length);
        return run(words);
    }

    private static String run(String... words) {
        var out = new ByteArrayOutputStream();
        var printer = new PrintStream(out, true, StandardCharsets.UTF_8);
        assertEquals(0, Main.run(printer, printer, words), () -> out.toString(StandardCharsets.UTF_8));
        return out.toString(StandardCharsets.UTF_8);
    }

    private static String withoutItsHour(String json) {
        return json.replaceFirst("\"now\":\"[^\"]*\"", "");
    }

    @Test
    void today_saysTheSame_fromTheBook_fromTheTextKept_andFromThePictureKept() throws IOException {
        book(Instant.now());
        var text = today();
        assertTrue(text.lines().count() > 5, text);
        assertTrue(Files.exists(aside()));
        assertEquals(text, today(), "from the text");
        var json = withoutItsHour(today("--json"));
        Files.delete(aside());
        assertEquals(json, withoutItsHour(today("--json")), "JSON, from the book and from the picture");
    }

    @Test
    void everyHourOfTheNextDays_readsAsTheBookSays() {
        var now = Instant.now();
        book(now.minus(Duration.ofDays(9)));
        var data = DataFolder.at(folder);
        try (var store = data.read()) {
            var picture = Ledger.of(store.all()).picture();
            var head = store.head();
            TodayAside.leave(data, head, picture, now);
            var kept = TodayAside.find(data, head).orElseThrow();
            var readings = new HashSet<String>();
            for (var at = now; at.isBefore(now.plus(Duration.ofDays(8))); at = at.plus(Duration.ofMinutes(37))) {
                var sheet = TodayText.sheet(picture, at);
                var text = TodayText.of(picture, sheet);
                assertEquals(text, kept.text(at).orElseThrow());
                assertEquals(TodayReading.json(picture, sheet), kept.json(at).orElseThrow());
                readings.add(text);
            }
            assertTrue(readings.size() > 20, "Texts that differ: " + readings.size());
            assertTrue(kept.text(now.minusSeconds(60)).isEmpty(), "the clock was set back");
            assertTrue(kept.json(now.plus(Duration.ofDays(10))).isEmpty(), "later than was worked out");
        }
    }

    @Test
    void everyCommandThatWrites_leavesTheAnswerBehind() throws IOException {
        book(Instant.now());
        run("export", "--data", folder.toString());
        assertFalse(Files.exists(aside()), "reading leaves nothing");
        var exported = folder.resolve("farm.jsonl");
        Files.writeString(exported, run("export", "--data", folder.toString()));
        var backup = folder.resolve("farm.backup");
        run("backup", backup.toString(), "--data", folder.toString());
        var season = folder.resolve("season.csv");
        Files.writeString(season, "set,set_on,species,tray,eggs\n1,2025-04-07,pheasant,1,54\n");
        for (var words : List.of(
                List.of("import", "book", exported.toString(), "--data"),
                List.of("import", "season", season.toString(), "--data"),
                List.of("restore", backup.toString(), "--data"),
                List.of("simulate", "--seed", "3", "--out"))) {
            var made = folder.resolve(String.join("-", words.subList(0, 2)));
            var all = new ArrayList<>(words);
            all.add(made.toString());
            run(all.toArray(String[]::new));
            var data = DataFolder.at(made);
            try (var store = data.read()) {
                var kept = TodayAside.find(data, store.head());
                assertTrue(kept.flatMap(k -> k.text(Instant.now())).isPresent(), () -> words + " left its text");
                assertTrue(kept.flatMap(k -> k.json(Instant.now())).isPresent(), () -> words + " left its answer");
            }
        }
    }

    @Test
    void aDeskThatIsClosedAtOnce_leavesTheLastNoteBehind() {
        book(Instant.now());
        var data = DataFolder.at(folder);
        try (var store = data.write()) {
            try (var keeper = new TodayKeeper(data, store)) {
                keeper.look(Ledger.of(store.all()).picture());
            }
            assertTrue(TodayAside.find(data, store.head()).isPresent());
        }
    }

    @Test
    void whatWasKept_isNotUsed_whenTheBookHasGrown() throws IOException {
        book(Instant.now().minus(Duration.ofDays(9)));
        var before = today();
        var kept = Files.readAllBytes(aside());
        book(Instant.now());
        var after = today();
        assertNotEquals(before, after);
        Files.write(aside(), kept);
        assertEquals(after, today(), "the older file lies there again");
    }

    @Test
    void whatAnotherBuildKept_isNotUsed() throws IOException {
        book(Instant.now());
        today();
        var kept = Files.readAllBytes(aside());
        System.setProperty("eggwright.build", "build-2");
        today();
        assertFalse(java.util.Arrays.equals(kept, Files.readAllBytes(aside())));
    }

    @Test
    void whatIsDamaged_isWorkedOutAgain() throws IOException {
        book(Instant.now());
        var text = today();
        var kept = Files.readAllBytes(aside());
        for (int at : new int[] {0, 5, 60, kept.length / 2, kept.length - 1}) {
            var damaged = kept.clone();
            damaged[at] ^= 0x55;
            Files.write(aside(), damaged);
            assertEquals(text, today(), "byte " + at);
        }
        Files.write(aside(), new byte[0]);
        assertEquals(text, today());
    }

    @Test
    void nothingIsKept_withoutABuild_orForAnHourThatWasAskedFor() throws IOException {
        book(Instant.now());
        today("--at", "2027-05-10T12:00-05:00");
        System.clearProperty("eggwright.build");
        today();
        assertFalse(Files.exists(aside()));
        var before = Files.readAllBytes(folder.resolve("book.sqlite"));
        System.setProperty("eggwright.build", "build-1");
        today();
        assertArrayEquals(
                before, Files.readAllBytes(folder.resolve("book.sqlite")), "the book itself is never touched");
    }
}
