package eggwright.cli.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Remarked;
import eggwright.book.name.BuyerNumber;
import eggwright.desk.Desk;
import eggwright.desk.farm.FarmDesk;
import eggwright.store.DataFolder;
import eggwright.store.FullDisk;
import eggwright.store.SqliteEntryStore;
import eggwright.wire.EntryCodec;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The book on a full disk, through the desk's own door: a page that says so, with everything typed still on it. */
class FullDiskTest {
    private static final String STORY =
            "The north pen needs wire & staples. ".repeat(50).strip();

    private static final Pattern ENTRY_ID = Pattern.compile("name=\"entry_id\" value=\"([^\"]+)\"");

    @TempDir
    private Path folder;

    private final HttpClient browser = HttpClient.newHttpClient();
    private SqliteEntryStore store;
    private Desk desk;

    @BeforeEach
    void open() {
        store = DataFolder.at(folder).write();
        desk = Desk.open(FarmDesk.setup(
                store,
                store.people(),
                EntryCodec::write,
                EntryCodec::version,
                InstantSource.system(),
                new SplittableRandom(1),
                ZoneId.of("America/Chicago"),
                0));
    }

    @AfterEach
    void close() {
        desk.close();
        store.close();
    }

    private HttpResponse<String> get(String path) throws Exception {
        return browser.send(
                HttpRequest.newBuilder(desk.address().resolve(path)).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, Map<String, String> typed) throws Exception {
        var form = typed.entrySet().stream()
                .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        var own = desk.address();
        return browser.send(
                HttpRequest.newBuilder(own.resolve(path))
                        .header("Origin", own.getScheme() + "://" + own.getAuthority())
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private static String entryId(String page) {
        var found = ENTRY_ID.matcher(page);
        assertTrue(found.find(), page);
        return found.group(1);
    }

    private long remarks() {
        return store.all().stream()
                .filter(k -> k.entry().payload() instanceof Remarked)
                .count();
    }

    /** What was typed, and what the desk answered when there was no room for it. */
    private record Refused(Map<String, String> typed, HttpResponse<String> answer) {
        String id() {
            return typed.getOrDefault("entry_id", "");
        }
    }

    /** Notes until the pages that the file has already are full: the book needs a further one, and gets none. */
    private Refused refusedOnAFullDisk() throws Exception {
        FullDisk.fill(store);
        for (int i = 0; i < 60; i++) {
            var typed = Map.of(
                    "entry_id",
                    entryId(get("/notes/remark").body()),
                    "text",
                    STORY,
                    "happened",
                    "2027-05-12T09:00",
                    "who",
                    "Wren");
            var answer = post("/notes/remark", typed);
            if (answer.statusCode() != 303) {
                return new Refused(typed, answer);
            }
        }
        throw new AssertionError("sixty remarks found room on a full disk");
    }

    @Test
    void noteOnAFullDisk_isNotSaved_andWhatWasTypedStays_andIsKeptWhenThereIsRoom() throws Exception {
        var refused = refusedOnAFullDisk();
        long kept = remarks();

        assertEquals(503, refused.answer().statusCode());
        var page = refused.answer().body();
        assertTrue(page.contains("Not saved: the disk is full. What you typed is still here."), page);
        assertTrue(page.contains(STORY.replace("&", "&amp;")), "the story stays");
        assertTrue(page.contains("value=\"2027-05-12T09:00\"") && page.contains("value=\"Wren\""), "so does the rest");
        assertEquals(refused.id(), entryId(page), "the form keeps its id, so that sending it again is harmless");
        assertEquals(200, get("/book").statusCode(), "the desk goes on");
        assertEquals(503, post("/notes/remark", refused.typed()).statusCode(), "still full");
        assertEquals(kept, remarks());

        FullDisk.makeRoom(store);
        var then = post("/notes/remark", refused.typed());
        assertEquals(303, then.statusCode());
        assertEquals(
                "/entries/" + refused.id() + "?kept=now",
                then.headers().firstValue("Location").orElse(""));
        assertEquals(303, post("/notes/remark", refused.typed()).statusCode());
        assertEquals(kept + 1, remarks());
    }

    /** A refused form is the answer to a POST: choosing colours there must not load the page afresh. */
    @Test
    void coloursChosenOnARefusedForm_loseNothingTyped_andKeepNothing() throws Exception {
        var refused = refusedOnAFullDisk();
        long kept = remarks();
        assertTrue(
                refused.answer().body().contains("form=\"entry\" name=\"colours\" value=\"dusk\""),
                "the colours belong to the form");

        FullDisk.makeRoom(store);
        var typed = new TreeMap<>(refused.typed());
        typed.put("colours", "dusk");
        typed.put("refused", "yes");
        assertTrue(refused.answer().body().contains("name=\"refused\" value=\"yes\""), "the form remembers");
        var dusk = post("/notes/remark", typed);

        assertEquals(200, dusk.statusCode());
        assertTrue(dusk.headers().firstValue("Set-Cookie").orElse("").startsWith("look=dusk;"));
        assertTrue(dusk.body().contains("data-look=\"dusk\""));
        assertTrue(dusk.body().contains("Not saved yet. What you typed is still here."), "the notice stays");
        assertTrue(dusk.body().contains(STORY.replace("&", "&amp;")));
        assertEquals(refused.id(), entryId(dusk.body()));
        assertEquals(kept, remarks());
    }

    @Test
    void buyerOnAFullDisk_isNotSaved_andStaysOnThePage() throws Exception {
        FullDisk.fill(store);
        var address = "The Old Forge, behind the mill. ".repeat(31).strip();
        for (int i = 0; i < 30; i++) {
            var answer = post(
                    "/settings/people/new", Map.of("number", "b-" + i, "name", "Tansy Holloway", "address", address));
            if (answer.statusCode() == 503) {
                assertTrue(answer.body().contains("Not saved: the disk is full."), answer.body());
                assertTrue(answer.body().contains(address) && answer.body().contains("Tansy Holloway"));
                assertTrue(store.people().find(new BuyerNumber("b-" + i)).isEmpty());
                return;
            }
        }
        throw new AssertionError("thirty buyers found room on a full disk");
    }

    /** More rows than one note takes: said beside the field, nothing kept, and every row still there. */
    @Test
    void moreRowsThanANoteTakes_areRefusedInWords_andNoneIsLost() throws Exception {
        var typed = new TreeMap<String, String>();
        typed.put("set", "77");
        typed.put("species", "pheasant");
        for (int i = 0; i < 620; i++) {
            typed.put("lot." + i + ".tray", "T" + i);
            typed.put("lot." + i + ".eggs", "30");
        }
        long before = store.count();
        var refused = post("/notes/eggs-set", typed);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("id=\"f-lot-message\">One note takes 500 rows"), "beside the field");
        for (int i = 0; i < 620; i++) {
            assertTrue(refused.body().contains("value=\"T" + i + "\""), "tray T" + i);
        }
        assertEquals(before, store.count());
    }
}
