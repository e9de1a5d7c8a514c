package eggwright.cli.farm;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
        var out = new ByteArrayOutputStream();
        var words = new String[more.length + 3];
        words[0] = "today";
        words[1] = "--data";
        words[2] = folder.toString();
        System.arraycopy(more, 0, words, 3, more.length);
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
