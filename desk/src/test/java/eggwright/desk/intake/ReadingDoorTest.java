package eggwright.desk.intake;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.Readings;
import eggwright.climate.reading.SensorName;
import eggwright.desk.NetworkDesk;
import eggwright.desk.PlainHttp;
import eggwright.desk.words.Words;
import eggwright.intake.message.Complaint;
import eggwright.intake.message.Intake;
import eggwright.intake.sensor.Sensors;
import eggwright.intake.sensor.SensorsInMemory;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a sensor sends over real sockets: over https from the network, and at the machine itself. */
final class ReadingDoorTest {
    @TempDir
    private static Path folder;

    private static NetworkDesk farm;

    @BeforeAll
    static void openTheDesk() {
        farm = new NetworkDesk(folder);
    }

    @AfterAll
    static void closeTheDesk() {
        farm.close();
    }

    private static String token(String name) {
        return farm.sensor(name, Quantity.AIR_TEMPERATURE, ReadingUnit.FAHRENHEIT);
    }

    /** As a sensor does it: no Origin, no cookie, a type of its maker's liking. */
    private static PlainHttp.Answer send(String token, String message, Map<String, String> more) throws IOException {
        var headers = new HashMap<>(Map.of("Authorization", "Bearer " + token, "Content-Type", "text/plain"));
        headers.putAll(more);
        return PlainHttp.ask(farm.desk.address().getPort(), "POST", "/api/readings", headers, message);
    }

    private static PlainHttp.Answer send(String token, String message) throws IOException {
        return send(token, message, Map.of());
    }

    private static Readings kept(String name) {
        return farm.readings.channels().stream()
                .filter(c -> c.sensor().text().equals(name))
                .findFirst()
                .map(ReadingDoorTest::all)
                .orElse(Readings.NONE);
    }

    private static Readings all(Channel channel) {
        return farm.readings.between(channel, Instant.EPOCH, NetworkDesk.NOON.plusSeconds(1));
    }

    @Test
    void number_isKept_andAcknowledged() throws IOException {
        var answer = send(token("plain"), "99.5");
        assertEquals(200, answer.status(), answer.body());
        assertEquals("{\"kept\":1,\"known\":0,\"held_back\":0}", answer.body());
        assertTrue(answer.header("Content-Type").startsWith("application/json"), answer.header("Content-Type"));
        assertEquals(Readings.of(NetworkDesk.NOON, 99.5), kept("plain"));
    }

    @Test
    void listWithTimes_isKept_overHttpsFromTheNetwork_andKnownWhenItComesAgain() throws IOException {
        var bearer = Map.of("Authorization", "bearer  " + token("listed"), "Origin", "", "Content-Type", "text/plain");
        var body = """
                [{"value":99.4,"at":"2027-05-12T11:40:00-05:00"},{"value":185,"at":"2027-05-12T11:41:00-05:00"}]""";
        var first = farm.phone("POST", "/api/readings", "", bearer, body);
        assertEquals("{\"kept\":2,\"known\":0,\"held_back\":1}", first.body());
        assertEquals(
                "{\"kept\":0,\"known\":2,\"held_back\":1}",
                farm.phone("POST", "/api/readings", "", bearer, body).body());
        assertEquals(2, kept("listed").count());
    }

    @Test
    void token_isNotTakenInTheOpen_norFromTheAddress_norAsAPassword() throws IOException {
        var token = token("open");
        var open = farm.open("POST", "/api/readings", Map.of("Authorization", "Bearer " + token));
        assertEquals(405, open.status());
        assertEquals(
                401,
                PlainHttp.ask(
                                farm.desk.address().getPort(),
                                "POST",
                                "/api/readings?access_token=" + token,
                                Map.of(),
                                "99.5")
                        .status());
        var basic = send(token, "99.5", Map.of("Authorization", "Basic " + token));
        assertEquals(401, basic.status());
        assertEquals("Bearer realm=\"readings\"", basic.header("WWW-Authenticate"));
        assertTrue(kept("open").isEmpty());
    }

    /** RFC 6750, section 3.1. */
    @Test
    void tokenThatIsRevoked_isToldSo_fromTheNextMessageOn() throws IOException {
        var token = token("revoked");
        assertEquals(200, send(token, "99.5").status());
        farm.sensors.all().stream().filter(s -> s.name().equals("revoked")).forEach(s -> farm.sensors.revoke(s.id()));
        var answer = send(token, "99.6");
        assertEquals(401, answer.status());
        assertEquals("Bearer realm=\"readings\", error=\"invalid_token\"", answer.header("WWW-Authenticate"));
        assertTrue(answer.body().contains("The token of revoked was revoked. Nothing of it was kept."), answer.body());
        assertEquals(1, kept("revoked").count());
    }

    @Test
    void whatIsWrong_isSaidInPlainWords() throws IOException {
        var token = token("wrong");
        var unit = send(token, "37.5 C");
        assertEquals(422, unit.status());
        assertEquals(
                "{\"title\":\"This reading was not taken\",\"happened\":\"The reading is in “C”, but the sensor is noted"
                        + " in °F. Nothing of it was kept.\",\"doNext\":\"Let the sensor send °F, or add it again in its own"
                        + " unit.\"}",
                unit.body());
        var word = send(token, "warm");
        assertEquals(400, word.status());
        assertTrue(word.body().contains("“warm” is not a number."), word.body());
        var toCome = send(token, "{\"value\":99.5,\"at\":\"2027-05-12T23:00:00Z\"}");
        assertEquals(422, toCome.status());
        assertTrue(toCome.body().contains("“2027-05-12T23:00:00Z” is still to come."), toCome.body());
        assertTrue(kept("wrong").isEmpty());
    }

    @Test
    void tooLong_isRefusedUnread_andWithoutLengthToo() throws IOException {
        var token = token("long");
        var length = Integer.toString(Intake.LONGEST + 1);
        var answer = send(token, "9", Map.of("Content-Length", length));
        assertEquals(413, answer.status());
        assertTrue(answer.body().contains("longer than 128 KB"), answer.body());
        assertEquals(200, send(token, "99.5" + " ".repeat(Intake.LONGEST - 4)).status());
    }

    /** The line breaks within the number: 9 is not what the sensor read. */
    @Test
    void messageThatIsCutShort_isNotKept() throws IOException {
        var head = "POST /api/readings HTTP/1.1\r\nHost: 127.0.0.1:"
                + farm.desk.address().getPort() + "\r\nAuthorization: Bearer " + token("cut")
                + "\r\nContent-Length: 4\r\n\r\n9";
        try (var socket =
                new Socket(InetAddress.getLoopbackAddress(), farm.desk.address().getPort())) {
            socket.getOutputStream().write(head.getBytes(UTF_8));
            socket.shutdownOutput();
            var answer = new String(socket.getInputStream().readAllBytes(), UTF_8);
            assertFalse(answer.startsWith("HTTP/1.1 200"), answer);
        }
        assertTrue(kept("cut").isEmpty());
    }

    @Test
    void tooOften_isToldToWait() throws IOException {
        var token = token("often");
        PlainHttp.Answer last = null;
        for (int i = 0; i < 200; i++) {
            last = send(token, "99.5");
            if (last.status() != 200) {
                break;
            }
        }
        assertEquals(429, java.util.Objects.requireNonNull(last).status());
        assertFalse(last.header("Retry-After").isEmpty());
    }

    /** A page elsewhere cannot make a browser send the header: it asks for leave first (OPTIONS), and gets none. */
    @Test
    void browserThatAsksForLeave_getsNone() throws IOException {
        var asked = PlainHttp.ask(
                farm.desk.address().getPort(),
                "OPTIONS",
                "/api/readings",
                Map.of(
                        "Origin", "https://elsewhere.example",
                        "Access-Control-Request-Method", "POST",
                        "Access-Control-Request-Headers", "authorization"),
                "");
        assertEquals(405, asked.status());
        assertTrue(asked.headers().keySet().stream().noneMatch(h -> h.startsWith("access-control")), asked.toString());
    }

    @Test
    void jsonThatCannotBeRead_isSaidWithItsPlace_whereThatIsKnown() {
        var words = new ComplaintWords(Words.beside(ReadingDoor.class, Locale.ENGLISH));
        assertEquals(
                "The JSON cannot be read at line 3, column 4.",
                words.brief(Complaint.of(Complaint.Kind.NOT_JSON, 3, 4)));
        assertEquals("The JSON cannot be read.", words.brief(Complaint.of(Complaint.Kind.NOT_JSON)));
    }

    @Test
    void whatIsKept_isAcknowledged_whereWhatIsHeldBackCouldNotBeCounted() {
        var clock = InstantSource.fixed(NetworkDesk.NOON);
        var sensors = new Sensors(new SensorsInMemory(), clock, new SplittableRandom(11));
        var added = (Sensors.Added.In) sensors.add(new Channel(
                new ReadingPlace.Brooder(), SensorName.ONLY, Quantity.AIR_TEMPERATURE, ReadingUnit.FAHRENHEIT));
        var door = new ReadingDoor(new Intake(sensors, new WriteOnly(), clock), Locale.ENGLISH);
        var heard = door.hear(added.token(), "99.5".getBytes(UTF_8));
        assertEquals(200, heard.status());
        assertEquals("{\"kept\":1,\"known\":0,\"held_back\":null}", heard.json());
    }

    /** A disk that takes what is written and does not give it back just now. */
    private static final class WriteOnly implements ReadingStore {
        @Override
        public List<Channel> channels() {
            return List.of();
        }

        @Override
        public Readings between(Channel channel, Instant from, Instant to) {
            throw new IllegalStateException("The disk does not answer");
        }

        @Override
        public Optional<Extent> extent(Channel channel) {
            return Optional.empty();
        }

        @Override
        public Taken take(Channel channel, Readings readings) {
            return new Taken(readings.count(), 0);
        }

        @Override
        public Load load() {
            throw new IllegalStateException("The disk does not answer");
        }

        @Override
        public void close() {}
    }

    @ParameterizedTest
    @EnumSource
    void everyComplaint_hasItsWords_andSaysWhatToDo(Complaint.Kind kind) {
        var words = new ComplaintWords(Words.beside(ReadingDoor.class, Locale.ENGLISH));
        var why = Complaint.of(kind, "this", "that");
        assertTrue(words.happened(why).endsWith(". Nothing of it was kept."), words.happened(why));
        assertTrue(words.next(why).endsWith("."), words.next(why));
        assertFalse((words.happened(why) + words.next(why)).matches("(?s).*\\{\\d.*"), "every place is filled");
        assertTrue(ReadingDoor.status(kind) >= 400);
    }

    @ParameterizedTest
    @ValueSource(strings = {"GET", "PUT", "DELETE"})
    void nothingElse_isDoneThere(String method) throws IOException {
        var answer = PlainHttp.ask(
                farm.desk.address().getPort(),
                method,
                "/api/readings",
                Map.of("Authorization", "Bearer " + token(method)),
                "");
        assertEquals(405, answer.status());
    }
}
