package eggwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.fold.Ledger;
import eggwright.book.picture.SetPicture;
import eggwright.desk.door.Headers;
import eggwright.desk.network.FarmAuthority;
import eggwright.desk.network.TrustingSockets;
import eggwright.desk.picture.QrReader;
import eggwright.desk.who.Role;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.security.cert.CertificateFactory;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import javax.net.ssl.SSLHandshakeException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The desk as the network meets it: encrypted and in the open, under its name and any other. */
final class NetworkDeskTest {
    private static final Pattern CODE = Pattern.compile("class=\"code-shown\">([0-9A-Z]{4}-[0-9A-Z]{4})<");

    @TempDir
    private static Path folder;

    @TempDir
    private static Path elsewhere;

    private static NetworkDesk farm;

    @BeforeAll
    static void openTheDesk() {
        farm = new NetworkDesk(folder);
    }

    @AfterAll
    static void closeTheDesk() {
        farm.close();
    }

    private static PlainHttp.Answer get(String path, String cookie) throws IOException {
        return farm.phone("GET", path, cookie, Map.of(), "");
    }

    private static String codeFor(Role role) throws IOException {
        var page = farm.here("POST", "/settings/devices/code", "role=" + role.word());
        var code = CODE.matcher(page.body());
        assertTrue(code.find(), page.body());
        return code.group(1);
    }

    @Test
    void clientThatTrustsTheAuthority_getsThrough_andNoOther() throws Exception {
        assertEquals(200, get("/join", "").status());

        var other = FarmAuthority.in(elsewhere, farm.lan.name(), InstantSource.system(), new SecureRandom());
        assertThrows(
                SSLHandshakeException.class,
                () -> PlainHttp.ask(
                        TrustingSockets.of(other, NetworkDesk.NAME), farm.lan.port(), "GET", "/join", Map.of(), ""));
        assertThrows(
                SSLHandshakeException.class,
                () -> PlainHttp.ask(
                        TrustingSockets.of(farm.lan.authority(), "other.local"),
                        farm.lan.port(),
                        "GET",
                        "/join",
                        Map.of(),
                        ""));
    }

    /** The Java library's own client: the certificate holds for the machine itself too, but the desk does not answer so. */
    @Test
    void usualClient_meetsAGoodCertificate_andIsToldTheName() throws Exception {
        try (var client = HttpClient.newBuilder()
                .sslContext(TrustingSockets.context(farm.lan.authority()))
                .build()) {
            var answer = client.send(
                    HttpRequest.newBuilder(URI.create("https://localhost:" + farm.lan.port() + "/sets"))
                            .build(),
                    HttpResponse.BodyHandlers.ofString());
            assertEquals(421, answer.statusCode());
            assertTrue(answer.body().contains(farm.origin()), answer.body());
            assertTrue(answer.headers().firstValue("Strict-Transport-Security").isEmpty());
        }
    }

    @Test
    void headers_holdTheBrowserToHttps_andToTheDesk() throws IOException {
        var answer = get("/join", "");

        Headers.ALWAYS.forEach((name, value) -> assertEquals(value, answer.header(name), name));
        assertEquals("max-age=31536000", answer.header("Strict-Transport-Security"));
        assertEquals("nosniff", answer.header("X-Content-Type-Options"));
        assertTrue(answer.header("Permissions-Policy").contains("screen-wake-lock=(self)"));
        assertFalse(answer.body().contains("<script"), answer.body());
        assertEquals("", farm.here("GET", "/", "").header("Strict-Transport-Security"));
    }

    @Test
    void page_asksNothingOfAnyoneElse() throws IOException {
        var cookie = farm.joined(Role.OWNER, "Looks around");
        for (var path :
                List.of("/", "/join", "/sign-in", "/settings/devices", "/settings/devices/sheet", "/sets/27-5")) {
            var body = get(path, cookie).body();
            var sources = Pattern.compile("(?:src|action|<link[^>]*href)=\"([^\"]*)\"")
                    .matcher(body);
            while (sources.find()) {
                assertTrue(sources.group(1).startsWith("/"), path + " asks for " + sources.group(1));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"192.168.1.4", "127.0.0.1", "localhost", "larkfield.example", "[fe80::1]"})
    void anyOtherName_isToldTheName_andNothingElse(String host) throws IOException {
        var cookie = farm.joined(Role.OWNER, "By another name");
        var answer = farm.phone("GET", "/sets", cookie, Map.of("Host", host + ":" + farm.lan.port()), "");

        assertEquals(421, answer.status());
        assertTrue(answer.body().contains(farm.origin()), answer.body());
        assertFalse(answer.body().contains("27-5"), answer.body());
    }

    @ParameterizedTest
    @ValueSource(strings = {"larkfield.local", "192.168.1.4", "127.0.0.1", "localhost"})
    void inTheOpen_onlyTheWayIsTold_whateverIsAsked(String host) throws IOException {
        var cookie = farm.joined(Role.OWNER, "In the open");
        for (var path :
                List.of("/", "/sets", "/settings/devices", "/assets/css/base.css", "/api/now", "/t/60", "/join")) {
            for (var method : List.of("GET", "HEAD", "POST", "PUT", "DELETE", "OPTIONS")) {
                var answer = farm.open(
                        method,
                        path,
                        Map.of("Host", host + ":" + farm.lan.port(), "Cookie", cookie, "Origin", farm.origin()));
                var status = method.equals("GET") || method.equals("HEAD") ? (path.equals("/") ? 200 : 404) : 405;
                assertEquals(status, answer.status(), method + " " + path);
                assertEquals("", answer.header("Set-Cookie"));
                assertTrue(
                        method.equals("HEAD") || answer.body().contains("Take the certificate"),
                        method + " " + path + answer.body());
                assertFalse(answer.body().contains("27-5"), answer.body());
                assertTrue(
                        answer.header("Content-Security-Policy").startsWith("default-src 'none'; style-src 'sha256-"));
            }
        }
    }

    @Test
    void inTheOpen_theCertificateCanBeFetched_andIsTheAuthoritys() throws Exception {
        var answer = farm.open("GET", "/authority.cer", Map.of());
        assertEquals("application/x-x509-ca-cert", answer.header("Content-Type"));
        try (var client = HttpClient.newHttpClient()) {
            var bytes = client.send(
                            HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + farm.lan.port() + "/authority.cer"))
                                    .build(),
                            HttpResponse.BodyHandlers.ofByteArray())
                    .body();
            var read = CertificateFactory.getInstance("X.509").generateCertificate(new ByteArrayInputStream(bytes));
            assertEquals(farm.lan.authority().certificate(), read);
        }
        var page = farm.open("GET", "/", Map.of()).body();
        assertTrue(page.contains(farm.lan.authority().fingerprint().substring(0, 23)), page);
        assertTrue(page.contains("http://larkfield.local:" + farm.lan.port() + "/authority.cer"), page);
    }

    @Test
    void phone_joins_notes_andIsOutAtTheNextRequestWhenLetGo() throws IOException {
        assertEquals(401, get("/", "").status());
        var code = codeFor(Role.HAND);
        var joined = farm.phone("POST", "/join", "", Map.of(), "code=" + code + "&name=Barn%20phone");
        assertEquals(303, joined.status(), joined.body());
        var cookie = joined.header("Set-Cookie");
        assertTrue(
                cookie.matches("__Host-device=[\\w-]{43}; Path=/; Max-Age=34560000; Secure; HttpOnly; SameSite=Strict"),
                cookie);
        var token = cookie.substring(0, cookie.indexOf(';'));
        assertTrue(get("/", token).body().contains("This device is Barn phone."));

        var again = farm.phone("POST", "/join", "", Map.of(), "code=" + code + "&name=Other");
        assertEquals(422, again.status());
        assertTrue(again.body().contains("This code is not good"), again.body());

        var id = farm.devices.all().stream()
                .filter(d -> d.name().text().equals("Barn phone"))
                .findFirst()
                .orElseThrow()
                .id();
        assertEquals(
                403,
                farm.phone("POST", "/settings/devices/" + id + "/let-go", token, Map.of(), "")
                        .status());
        assertEquals(
                303,
                farm.here("POST", "/settings/devices/" + id + "/let-go", "").status());
        assertEquals(401, get("/", token).status());
        assertEquals(
                401,
                farm.phone("POST", "/notes/remark", token, Map.of(), "text=still+here")
                        .status());
    }

    @Test
    void aWrite_fromElsewhere_isRefused_evenWithTheCookie() throws IOException {
        var cookie = farm.joined(Role.HAND, "Lured");
        for (var origin :
                List.of("https://elsewhere.example", "http://" + NetworkDesk.NAME + ":" + farm.lan.port(), "null")) {
            assertEquals(
                    403,
                    farm.phone("POST", "/notes/remark", cookie, Map.of("Origin", origin), "text=x")
                            .status());
        }
        assertEquals(
                403,
                farm.phone("POST", "/notes/remark", cookie, Map.of("Sec-Fetch-Site", "same-site"), "text=x")
                        .status());
    }

    /** A token counts for nothing on the loopback, and the loopback's freedom for nothing on the network. */
    @Test
    void machineItself_isTheOwner_onItsLoopbackOnly() throws IOException {
        assertEquals(200, farm.here("GET", "/settings/passphrase", "").status());
        var loopbackPort = farm.desk.address().getPort();
        assertEquals(
                421,
                farm.phone("GET", "/", "", Map.of("Host", "127.0.0.1:" + loopbackPort), "")
                        .status());
        assertEquals(
                404,
                farm.open("GET", "/settings", Map.of("Host", "127.0.0.1:" + loopbackPort))
                        .status());
        assertEquals(
                403,
                farm.phone("GET", "/settings/passphrase", farm.joined(Role.OWNER, "Owner’s phone"), Map.of(), "")
                        .status());
    }

    @Test
    void owner_signsIn_andOut() throws IOException {
        var set = farm.here(
                "POST", "/settings/passphrase", "passphrase=barn+lantern+oat+eleven&again=barn+lantern+oat+eleven");
        assertEquals(200, set.status(), set.body());
        var short15 = farm.here("POST", "/settings/passphrase", "passphrase=barn+lantern&again=barn+lantern");
        assertEquals(422, short15.status());
        assertTrue(short15.body().contains("at least 15 characters, and this one has 12"), short15.body());

        var in = farm.phone("POST", "/sign-in", "", Map.of(), "name=Kitchen&passphrase=barn+lantern+oat+eleven");
        assertEquals(303, in.status(), in.body());
        var cookie = in.header("Set-Cookie");
        assertTrue(cookie.matches("__Host-owner=[\\w-]{43}; Path=/; Secure; HttpOnly; SameSite=Strict"), cookie);
        var token = cookie.substring(0, cookie.indexOf(';'));
        assertEquals(200, get("/settings/devices", token).status());

        var out = farm.phone("POST", "/sign-out", token, Map.of(), "");
        assertTrue(out.header("Set-Cookie").startsWith("__Host-owner=; Path=/; Max-Age=0;"), out.header("Set-Cookie"));
        assertEquals(401, get("/settings/devices", token).status());
    }

    /** A camera opens a code from outside the browser, which then holds a strict cookie back: once, and not for ever. */
    @Test
    void pageOpenedFromOutside_asksOnceMoreByItself() throws IOException {
        var outside = Map.of("Sec-Fetch-Site", "cross-site", "Sec-Fetch-Mode", "navigate");
        assertEquals("0; url=/t/60", farm.phone("GET", "/t/60", "", outside, "").header("Refresh"));
        assertEquals("", get("/t/60", "").header("Refresh"));
        assertEquals(
                "",
                farm.phone("GET", "//elsewhere.example/t/60", "", outside, "").header("Refresh"));
        assertEquals(
                "",
                farm.phone(
                                "GET",
                                "/t/60",
                                "",
                                Map.of("Sec-Fetch-Site", "same-origin", "Sec-Fetch-Mode", "navigate"),
                                "")
                        .header("Refresh"));
    }

    @Test
    void label_opensWhatIsInTheTrayNow_andACardItsLoad() throws IOException {
        var cookie = farm.joined(Role.LOOKER, "Reads labels");
        var newest = Ledger.of(farm.store.all()).picture().sets().values().stream()
                .filter(SetPicture::isRunning)
                .max(Comparator.comparing(SetPicture::setOn))
                .orElseThrow();
        var set = newest.name().text();
        var tray = newest.loads().firstKey().text();
        assertEquals("/sets/" + set, get("/t/" + tray, cookie).header("Location"));
        assertEquals("/sets/" + set, get("/l/" + set + "/" + tray, cookie).header("Location"));
        var empty = get("/t/9999", cookie);
        assertEquals(404, empty.status());
        assertTrue(empty.body().contains("There is no load in tray 9999 now"), empty.body());
        var code = get("/t/60/code.svg", cookie);
        assertEquals("image/svg+xml;charset=utf-8", code.header("Content-Type").replace(" ", ""));
        assertEquals(farm.origin() + "/t/60", QrReader.read(code.body()));
        assertEquals(
                farm.origin() + "/l/" + set + "/" + tray,
                QrReader.read(
                        get("/l/" + set + "/" + tray + "/code.svg", cookie).body()));
    }

    @Test
    void joining_isLimited_overTheNetwork() throws IOException {
        int status = 0;
        for (int i = 0; i < 6; i++) {
            status = farm.phone("POST", "/join", "", Map.of(), "code=AAAA2222&name=Guess")
                    .status();
        }
        assertEquals(429, status);
        farm.clock.forward(Duration.ofMinutes(20));
    }
}
