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
    private static final Door DOOR = new Door(7040, 1000);

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
    void door_needsNoPort_onTheUsualOne() {
        assertEquals(new Pass(), new Door(80, 1000).judge(read("localhost")));
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
                Optional.of("localhost:7040"),
                Optional.of("http://localhost:7040"),
                Optional.empty(),
                Optional.empty());

        assertEquals(new Refused(Reason.LENGTH_UNSAID), DOOR.judge(knock));
    }

    private static Knock read(String host) {
        return new Knock(
                "GET",
                Optional.of(host).filter(h -> !h.isEmpty()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Knock write(String origin, String site, long bytes) {
        return new Knock(
                "POST", Optional.of("localhost:7040"), Optional.of(origin), Optional.of(site), Optional.of(bytes));
    }
}
