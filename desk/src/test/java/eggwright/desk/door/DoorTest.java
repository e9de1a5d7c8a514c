package eggwright.desk.door;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.desk.door.Verdict.Pass;
import eggwright.desk.door.Verdict.Reason;
import eggwright.desk.door.Verdict.Refused;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class DoorTest {
    private static final String FORM = "application/x-www-form-urlencoded";
    private static final String OWN = "http://localhost:7040";
    private static final Door DOOR = Door.ofThisMachine(7040, 1000, 4000, 9000);

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1:7040", "localhost:7040", "LOCALHOST:7040", "[::1]:7040"})
    void door_opens_forThisMachinesOwnNames(String host) {
        assertEquals(new Pass(), DOOR.judge(read(host)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "127.0.0.1",
                "127.0.0.1:80",
                "localhost.:7040",
                "localhost.example:7040",
                "127.0.0.1.example:7040",
                "192.168.1.4:7040",
                "0.0.0.0:7040",
                "[::1]",
                "a@localhost:7040"
            })
    void door_staysShut_forAnyOtherName(String host) {
        assertEquals(new Refused(Reason.OTHER_NAME), DOOR.judge(read(host)));
    }

    @Test
    void door_toTheNetwork_knowsOneNameOnly_overHttps() {
        var door = Door.ofNetwork("larkfield.local", 4748, 1000, 4000, 9000);
        assertEquals(new Pass(), door.judge(read("larkfield.local:4748")));
        assertEquals(new Pass(), door.judge(read("Larkfield.LOCAL:4748")));
        for (var other : new String[] {
            "larkfield.local",
            "192.168.1.4:4748",
            "localhost:4748",
            "127.0.0.1:4748",
            "larkfield.local.:4748",
            "[fe80::1]:4748"
        }) {
            assertEquals(new Refused(Reason.OTHER_NAME), door.judge(read(other)), other);
        }
        assertEquals(new Pass(), Door.ofNetwork("larkfield.local", 443, 1, 1, 1).judge(read("larkfield.local")));
    }

    @Test
    void write_fromTheNetwork_needsTheOriginOfTheHttpsName() {
        var door = Door.ofNetwork("larkfield.local", 4748, 1000, 4000, 9000);
        assertEquals(new Pass(), door.judge(networkWrite("https://larkfield.local:4748")));
        for (var other :
                new String[] {"http://larkfield.local:4748", "https://larkfield.local", "https://127.0.0.1:4748", "null"
                }) {
            assertEquals(new Refused(Reason.FROM_ELSEWHERE), door.judge(networkWrite(other)), other);
        }
    }

    private static Knock networkWrite(String origin) {
        return new Knock(
                "POST",
                "/notes/looked",
                Optional.of("larkfield.local:4748"),
                Optional.of(origin),
                Optional.of("same-origin"),
                Optional.of(FORM),
                Optional.of(10L));
    }

    @Test
    void door_needsNoPort_onTheUsualOne() {
        assertEquals(new Pass(), Door.ofThisMachine(80, 1000, 4000, 9000).judge(read("localhost")));
    }

    @Test
    void write_needsTheOriginOfTheNameItWasSentTo() {
        assertEquals(new Pass(), DOOR.judge(write("http://localhost:7040", "same-origin", 10)));
        assertEquals(new Refused(Reason.FROM_ELSEWHERE), DOOR.judge(write("http://127.0.0.1:7040", "same-origin", 10)));
        assertEquals(new Refused(Reason.FROM_ELSEWHERE), DOOR.judge(write("https://localhost:7040", "same-origin", 1)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"cross-site", "same-site", "none"})
    void write_isRefused_whenTheBrowserSaysItCameFromElsewhere(String site) {
        assertEquals(new Refused(Reason.FROM_ELSEWHERE), DOOR.judge(write("http://localhost:7040", site, 10)));
    }

    @Test
    void write_isRefused_whenItIsLongerThanAForm() {
        assertEquals(new Pass(), DOOR.judge(write("http://localhost:7040", "same-origin", 1000)));
        assertEquals(new Refused(Reason.TOO_LARGE), DOOR.judge(write("http://localhost:7040", "same-origin", 1001)));
    }

    @Test
    void write_isRefused_whenItDoesNotSayItsLength() {
        var knock = new Knock(
                "POST",
                "/notes/looked",
                Optional.of("localhost:7040"),
                Optional.of("http://localhost:7040"),
                Optional.empty(),
                Optional.of(FORM),
                Optional.empty());

        assertEquals(new Refused(Reason.LENGTH_UNSAID), DOOR.judge(knock));
    }

    @Test
    void script_sendsJson_underApiAndNowhereElse() {
        var json = "application/json; charset=utf-8";
        assertEquals(new Pass(), DOOR.judge(write("/api/entries", OWN, "same-origin", json, 4000)));
        assertEquals(new Refused(Reason.OTHER_KIND), DOOR.judge(write("/api/entries", OWN, "same-origin", FORM, 10)));
        assertEquals(
                new Refused(Reason.OTHER_KIND),
                DOOR.judge(write("/api/entries", OWN, "same-origin", "text/plain;application/json", 10)));
        assertEquals(new Refused(Reason.OTHER_KIND), DOOR.judge(write("/notes/looked", OWN, "same-origin", json, 10)));
    }

    @Test
    void script_isHeldToTheSameOrigin_andToALengthOfItsOwn() {
        var json = "application/json";
        assertEquals(
                new Refused(Reason.FROM_ELSEWHERE), DOOR.judge(write("/api/entries", OWN, "cross-site", json, 10)));
        assertEquals(new Refused(Reason.TOO_LARGE), DOOR.judge(write("/api/entries", OWN, "same-origin", json, 4001)));
    }

    /** A sensor is no browser: it has no Origin, and sends whatever type its maker liked. What lets it in is its token. */
    @Test
    void sensor_needsNoOrigin_atItsOwnAddressAndNowhereElse() {
        assertEquals(new Pass(), DOOR.judge(sensor("/api/readings", Optional.of(5L))));
        assertEquals(new Refused(Reason.LENGTH_UNSAID), DOOR.judge(sensor("/api/readings", Optional.empty())));
        for (var path : new String[] {"/api/readings/", "/api/reading", "/api/readings2", "/readings/files", "/"}) {
            assertEquals(new Refused(Reason.FROM_ELSEWHERE), DOOR.judge(sensor(path, Optional.of(5L))), path);
        }
    }

    private static Knock sensor(String path, Optional<Long> bytes) {
        return new Knock(
                "POST",
                path,
                Optional.of("localhost:7040"),
                Optional.empty(),
                Optional.empty(),
                Optional.of("text/plain"),
                bytes);
    }

    @Test
    void loggersFile_mayBeLonger_butComesFromAPageOfTheDesk() {
        var type = "multipart/form-data; boundary=x";
        assertEquals(new Pass(), DOOR.judge(write("/readings/files", OWN, "same-origin", type, 9000)));
        assertEquals(
                new Refused(Reason.TOO_LARGE), DOOR.judge(write("/readings/files", OWN, "same-origin", type, 9001)));
        assertEquals(
                new Refused(Reason.TOO_LARGE), DOOR.judge(write("/readings/files/x", OWN, "same-origin", type, 9000)));
        assertEquals(
                new Refused(Reason.FROM_ELSEWHERE), DOOR.judge(write("/readings/files", OWN, "cross-site", type, 10)));
    }

    private static Knock read(String host) {
        return new Knock(
                "GET",
                "/sets",
                Optional.of(host).filter(h -> !h.isEmpty()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Knock write(String origin, String site, long bytes) {
        return write("/notes/looked", origin, site, FORM, bytes);
    }

    private static Knock write(String path, String origin, String site, String type, long bytes) {
        return new Knock(
                "POST",
                path,
                Optional.of("localhost:7040"),
                Optional.of(origin),
                Optional.of(site),
                Optional.of(type),
                Optional.of(bytes));
    }
}
