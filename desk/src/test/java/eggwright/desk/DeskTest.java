package eggwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.desk.door.Headers;
import eggwright.desk.who.May;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A whole desk over a real socket, spoken to in plain HTTP so that every header can be chosen. */
final class DeskTest {
    private static final String SECRET = "what only the log may say";
    private static Desk desk;
    private static int port;

    @BeforeAll
    static void openTheDesk() {
        Pages pages = routes -> {
            routes.read("/sets/{set}", May.READ, visit -> Answer.notThere("set " + visit.at("set")));
            routes.read("/broken", May.READ, visit -> {
                throw new IllegalStateException(SECRET);
            });
            routes.read("/gravely-broken", May.READ, visit -> {
                throw new StackOverflowError(SECRET);
            });
            routes.read(
                    "/book.txt",
                    May.READ,
                    visit -> new Answer.Download(
                            "the book.txt",
                            "text/plain; charset=utf-8",
                            out -> out.write("14 sets".getBytes(StandardCharsets.UTF_8))));
            routes.tell("/api/now", May.READ, visit -> Answer.json("{}"));
            routes.take(
                    "/api/entries",
                    May.NOTE,
                    visit -> new Answer.Json(200, visit.body() + visit.visitor().device()));
            routes.read(
                    "/lamp-worker.js",
                    May.READ,
                    visit -> Answer.script("// " + routes.assets().url("css/base.css")));
            routes.write(
                    "/notes",
                    May.NOTE,
                    visit -> Answer.onward("/sets/" + visit.typed().text("set")));
        };
        desk = Desk.open(new Setup(() -> "Larkfield <Farm>", Locale.ENGLISH, 0, List.of(pages)));
        port = desk.address().getPort();
    }

    @AfterAll
    static void closeTheDesk() {
        desk.close();
    }

    @Test
    void everyAnswer_carriesTheHeaders_evenWhenThereIsNothing() throws IOException {
        var answer = ask("GET", "/nowhere", Map.of());

        assertEquals(404, answer.status());
        Headers.ALWAYS.forEach((name, value) -> assertEquals(value, answer.header(name), name));
        assertEquals("text/html;charset=utf-8", answer.header("Content-Type").replace(" ", ""));
        assertEquals("", answer.header("Server"));
        assertEquals("", answer.header("Set-Cookie"));
    }

    @Test
    void frame_isDrawnAsKept() throws IOException {
        Kept.samePage("problem/not-there.html", ask("GET", "/sets/14", Map.of()).body());
    }

    @Test
    void page_isFramed_withTheFarmsNameEscaped() throws IOException {
        var body = ask("GET", "/sets/14", Map.of()).body().strip();

        assertTrue(body.startsWith("<!doctype html>"), body);
        assertTrue(body.contains("<html lang=\"en\" data-look=\"system\">"), body);
        assertTrue(body.contains("Larkfield &lt;Farm&gt;"), body);
        assertTrue(body.contains("There is no set 14 in the book."), body);
    }

    @Test
    void aName_thatIsNotThisMachine_isRefused() throws IOException {
        var answer = ask("GET", "/sets/14", Map.of("Host", "larkfield.example:" + port));

        assertEquals(421, answer.status());
        assertTrue(answer.body().contains("answers only to its own name"), answer.body());
        assertEquals(
                404, ask("GET", "/sets/14", Map.of("Host", "localhost:" + port)).status());
    }

    @Test
    void aWrite_goesOn_whenItComesFromAPageOfTheDesk() throws IOException {
        var answer = write("/notes", "set=14", Map.of("Origin", own(), "Sec-Fetch-Site", "same-origin"));

        assertEquals(303, answer.status());
        assertEquals("/sets/14", answer.header("Location"));
    }

    @Test
    void aWrite_isRefused_whenItComesFromElsewhereOrDoesNotSay() throws IOException {
        assertEquals(403, write("/notes", "set=14", Map.of()).status());
        assertEquals(403, write("/notes", "set=14", Map.of("Origin", "null")).status());
        assertEquals(
                403,
                write("/notes", "set=14", Map.of("Origin", "http://127.0.0.1:1"))
                        .status());
        assertEquals(
                403,
                write("/notes", "set=14", Map.of("Origin", own(), "Sec-Fetch-Site", "same-site"))
                        .status());
    }

    @ParameterizedTest
    @ValueSource(strings = {"PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "QUERY"})
    void aMethod_thatNoPageKnows_isRefused(String method) throws IOException {
        assertEquals(405, ask(method, "/notes", Map.of("Origin", own())).status());
    }

    @Test
    void aPath_knownForWritingOnly_cannotBeRead() throws IOException {
        var answer = ask("GET", "/notes", Map.of());

        assertEquals(405, answer.status());
        assertTrue(answer.body().contains("cannot be used this way"), answer.body());
    }

    @Test
    void aForm_thatIsTooLong_isRefusedBeforeItIsRead() throws IOException {
        var answer = ask(
                "POST",
                "/notes",
                Map.of("Origin", own(), "Content-Length", Long.toString(Desk.LONGEST_FORM_BYTES + 1)));

        assertEquals(413, answer.status());
        assertTrue(answer.body().contains("at most 1 MB"), answer.body());
    }

    @Test
    void aScript_sendsJsonAndGetsJson_evenWhenItIsRefused() throws IOException {
        var own = Map.of("Origin", own(), "Content-Type", "application/json");
        var kept = PlainHttp.ask(port, "POST", "/api/entries", own, "{\"eggs\":54,\"by\":\"Zoë\"} ");
        assertEquals(200, kept.status());
        assertEquals("{\"eggs\":54,\"by\":\"Zoë\"} desk", kept.body());
        assertEquals(
                "application/json;charset=utf-8", kept.header("Content-Type").replace(" ", ""));

        var refused = PlainHttp.ask(port, "POST", "/api/entries", Map.of("Origin", own()), "eggs=54");
        assertEquals(415, refused.status());
        assertTrue(refused.body().startsWith("{\"title\":\"This was sent in another form\""), refused.body());
        assertEquals(404, ask("GET", "/api/nothing", Map.of()).status());
        assertTrue(ask("GET", "/api/nothing", Map.of()).body().startsWith("{"));
    }

    @Test
    void aBatch_mayBeLongerThanAForm_butHasItsEnd() throws IOException {
        var own = Map.of("Origin", own(), "Content-Type", "application/json");
        var long3MB = "\"" + "e".repeat(3 << 20) + "\"";
        assertEquals(
                200, PlainHttp.ask(port, "POST", "/api/entries", own, long3MB).status());
        var length = new java.util.HashMap<>(own);
        length.put("Content-Length", Long.toString(Desk.LONGEST_BATCH_BYTES + 1));
        assertEquals(
                413, PlainHttp.ask(port, "POST", "/api/entries", length, "").status());
    }

    @Test
    void aWorker_comesAsAScript_thatKnowsTheAssets() throws IOException {
        var worker = ask("GET", "/lamp-worker.js", Map.of());
        assertEquals(
                "text/javascript;charset=utf-8", worker.header("Content-Type").replace(" ", ""));
        assertTrue(worker.body().startsWith("// /assets/css/base."), worker.body());
        assertEquals("private, no-cache", worker.header("Cache-Control"));
    }

    @Test
    void aRoute_withoutRoles_cannotBeAdded() {
        assertThrows(IllegalArgumentException.class, () -> new May.Roles(Set.of()));
    }

    @Test
    void aFault_showsANoteAndNothingElse() throws IOException {
        var answer = ask("GET", "/broken", Map.of());

        assertEquals(500, answer.status());
        assertTrue(
                Pattern.compile("could not be drawn \\(note [2-9A-Y]{5}\\)")
                        .matcher(answer.body())
                        .find(),
                answer.body());
        assertFalse(answer.body().contains(SECRET), answer.body());
        assertFalse(answer.body().contains("Exception"), answer.body());
    }

    @Test
    void aFault_ofTheMachine_showsANoteToo() throws IOException {
        var answer = ask("GET", "/gravely-broken", Map.of());

        assertEquals(500, answer.status());
        assertTrue(answer.body().contains("note "), answer.body());
        assertFalse(answer.body().contains(SECRET), answer.body());
    }

    @Test
    void aRequest_thatCannotBeRead_getsALineOfText() throws IOException {
        var answer = ask("GET", "/%zz", Map.of());

        assertEquals(400, answer.status());
        assertTrue(answer.body().contains("could not be read"), answer.body());
        assertFalse(answer.body().contains("Jetty"), answer.body());
    }

    @Test
    void theLook_isRememberedByTheBrowser_andShownAtOnce() throws IOException {
        var chosen = write("/look", "colours=dusk&back=%2Fsets%2F14", Map.of("Origin", own()));
        assertEquals(303, chosen.status());
        assertEquals("/sets/14", chosen.header("Location"));
        assertTrue(chosen.header("Set-Cookie").startsWith("look=dusk; Path=/;"), chosen.header("Set-Cookie"));

        var page = ask("GET", "/sets/14?as_of=2027-04-05", Map.of("Cookie", "look=dusk"));
        assertTrue(page.body().contains("name=\"back\" value=\"/sets/14?as_of=2027-04-05\""), page.body());
        assertTrue(page.body().contains("data-look=\"dusk\""), page.body());
    }

    @Test
    void theLook_neverSendsAVisitorAway() throws IOException {
        var chosen = write("/look", "colours=dusk&back=%2F%2Felsewhere.example", Map.of("Origin", own()));

        assertEquals("/", chosen.header("Location"));
    }

    @Test
    void anAsset_isKeptForEver_underTheNameOfItsContent() throws IOException {
        var page = ask("GET", "/sets/14", Map.of()).body();
        var css = Pattern.compile("/assets/css/base\\.[0-9a-f]{10}\\.css").matcher(page);
        assertTrue(css.find(), page);

        var plain = ask("GET", css.group(), Map.of());
        assertEquals(200, plain.status());
        assertEquals(Headers.ASSET_CACHE, plain.header("Cache-Control"));
        assertEquals("", plain.header("Content-Encoding"));
        var packed = ask("GET", css.group(), Map.of("Accept-Encoding", "gzip, br"));
        assertEquals("gzip", packed.header("Content-Encoding"));
        assertEquals(
                404, ask("GET", "/assets/css/base.0000000000.css", Map.of()).status());
        assertEquals(404, ask("GET", "/assets/css/base.css", Map.of()).status());
    }

    @Test
    void aDownload_comesWithItsName() throws IOException {
        var answer = ask("GET", "/book.txt", Map.of());

        assertEquals("14 sets", answer.body());
        assertEquals("attachment; filename*=UTF-8''the%20book.txt", answer.header("Content-Disposition"));
    }

    @Test
    void head_answersAsGetDoes_withoutABody() throws IOException {
        var answer = ask("HEAD", "/book.txt", Map.of());

        assertEquals(200, answer.status());
        assertEquals("", answer.body());
    }

    @Test
    void aSecondDesk_onTheSamePort_saysSo() {
        var second = new Setup(() -> "Larkfield", Locale.ENGLISH, port, List.of());

        var refused = assertThrows(DeskNotOpened.class, () -> Desk.open(second));
        var said = String.valueOf(refused.getMessage());
        assertTrue(said.startsWith("Port " + port + " of this machine is taken"), said);
    }

    private static String own() {
        return "http://127.0.0.1:" + port;
    }

    private static PlainHttp.Answer write(String path, String form, Map<String, String> headers) throws IOException {
        return PlainHttp.ask(port, "POST", path, headers, form);
    }

    private static PlainHttp.Answer ask(String method, String path, Map<String, String> headers) throws IOException {
        return PlainHttp.ask(port, method, path, headers, "");
    }
}
