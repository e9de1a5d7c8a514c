package eggwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import eggwright.book.entry.Remarked;
import eggwright.book.name.DeviceName;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingUnit;
import eggwright.desk.who.May;
import eggwright.desk.who.Role;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Who may use what: every route for every role and for nobody, asked for over the network and at the machine itself. A route
 * that is added without a row here fails the test.
 */
final class RoleMatrixTest {
    /**
     * The route; a path that stands for it, and for which of its cases; who is let in: Machine, Owner, Hand, Looker, Nobody,
     * and a Sensor, which comes over the network with its token and nothing else.
     */
    private static final String TABLE = """
            GET  /                               | /                                | M O H L - -
            GET  /assets/<name>                  | /assets/css/none.css             | M O H L N S
            POST /look                           | /look                            | M O H L N S
            GET  /sets                           | /sets                            | M O H L - -
            GET  /sets/{set}                     | /sets/27-5                       | M O H L - -
            GET  /sets/{set}/forecast            | /sets/27-5/forecast              | M O H L - -
            GET  /rates                          | /rates                           | M O H L - -
            GET  /candlers                       | /candlers                        | M O H L - -
            GET  /egg-room                       | /egg-room                        | M O H L - -
            GET  /pens                           | /pens                            | M O H L - -
            GET  /machines                       | /machines                        | M O H L - -
            GET  /machines/{machine}             | /machines/Setter                 | M O H L - -
            GET  /machines/wet-bulb-table        | /machines/wet-bulb-table         | M O H L - -
            GET  /air/egg-room                   | /air/egg-room                    | M O H L - -
            GET  /air/brooder                    | /air/brooder                     | M O H L - -
            GET  /api/outside                    | /api/outside                     | M O H L - -
            GET  /machines/{machine}/sensors     | /machines/Setter/sensors         | M O H L - -
            GET  /egg-room/sensors               | /egg-room/sensors                | M O H L - -
            GET  /brooder/sensors                | /brooder/sensors                 | M O H L - -
            GET  /sensors                        | /sensors                         | M O H L - -
            GET  /book                           | /book                            | M O H L - -
            GET  /book/{id}                      | /book/$DESKS                     | M O H L - -
            GET  /settings                       | /settings                        | M O H L - -
            GET  /t/{tray}                       | /t/60                            | M O H L - -
            GET  /t/{tray}/code.svg              | /t/60/code.svg                   | M O H L - -
            GET  /l/{set}/{tray}                 | /l/27-5/60                       | M O H L - -
            GET  /l/{set}/{tray}/code.svg        | /l/27-5/60/code.svg              | M O H L - -
            GET  /lamp                           | /lamp                            | M O H - - -
            GET  /lamp-worker.js                 | /lamp-worker.js                  | M O H L N S
            GET  /lamp.webmanifest               | /lamp.webmanifest                | M O H L N S
            GET  /api/lamp/round                 | /api/lamp/round                  | M O H - - -
            POST /api/lamp/entries               | /api/lamp/entries                | M O H - - -
            POST /api/lamp/holding               | /api/lamp/holding                | M O H - - -
            GET  /notes                          | /notes                           | M O H - - -
            GET  /notes/{kind}                   | /notes/looked                    | M O H - - -
            GET  /notes/{kind}                   | /notes/farm-habits               | M O - - - -
            GET  /notes/{kind}                   | /notes/species-override          | M O - - - -
            POST /notes/{kind}                   | /notes/looked                    | M O H - - -
            POST /notes/{kind}                   | /notes/farm-habits               | M O - - - -
            POST /notes/{kind}                   | /notes/species-override          | M O - - - -
            GET  /entries/{id}                   | /entries/$DESKS                  | M O H L - -
            GET  /entries/{id}/mend              | /entries/$HANDS/mend             | M O H - - -
            GET  /entries/{id}/mend              | /entries/$DESKS/mend             | M O - - - -
            POST /entries/{id}/mend              | /entries/$HANDS/mend             | M O H - - -
            POST /entries/{id}/mend              | /entries/$DESKS/mend             | M O - - - -
            GET  /entries/{id}/withdraw          | /entries/$HANDS/withdraw         | M O H - - -
            GET  /entries/{id}/withdraw          | /entries/$DESKS/withdraw         | M O - - - -
            POST /entries/{id}/withdraw          | /entries/$HANDS/withdraw         | M O H - - -
            POST /entries/{id}/withdraw          | /entries/$DESKS/withdraw         | M O - - - -
            GET  /settings/devices               | /settings/devices                | M O - - - -
            POST /settings/devices/code          | /settings/devices/code           | M O - - - -
            POST /settings/devices/{device}/role | /settings/devices/none/role      | M O - - - -
            POST /settings/devices/{device}/let-go | /settings/devices/none/let-go  | M O - - - -
            GET  /settings/devices/sheet         | /settings/devices/sheet          | M O - - - -
            GET  /settings/passphrase            | /settings/passphrase             | M - - - - -
            POST /settings/passphrase            | /settings/passphrase             | M - - - - -
            GET  /settings/people                     | /settings/people                 | M O - - - -
            GET  /settings/people/new                 | /settings/people/new             | M O - - - -
            POST /settings/people/new                 | /settings/people/new             | M O - - - -
            GET  /settings/people/{buyer}/change      | /settings/people/b-1/change      | M O - - - -
            POST /settings/people/{buyer}/change      | /settings/people/b-1/change      | M O - - - -
            GET  /settings/people/{buyer}/erase       | /settings/people/b-1/erase       | M O - - - -
            POST /settings/people/{buyer}/erase       | /settings/people/b-1/erase       | M O - - - -
            POST /api/readings                   | /api/readings                    | - - - - - S
            GET  /settings/sensors               | /settings/sensors                | M O H L - -
            POST /settings/sensors/add           | /settings/sensors/add            | M O - - - -
            POST /settings/sensors/{sensor}/revoke | /settings/sensors/none/revoke  | M O - - - -
            GET  /readings/files                 | /readings/files                  | M O H - - -
            POST /readings/files                 | /readings/files                  | M O H - - -
            GET  /readings/files/{file}          | /readings/files/none             | M O H - - -
            POST /readings/files/{file}          | /readings/files/none             | M O H - - -
            POST /readings/watched               | /readings/watched                | M O H - - -
            GET  /join                           | /join                            | M O H L N S
            POST /join                           | /join                            | M O H L N S
            GET  /sign-in                        | /sign-in                         | M O H L N S
            POST /sign-in                        | /sign-in                         | M O H L N S
            POST /sign-out                       | /sign-out                        | M O H L N S
            """;

    private static final List<String> VISITORS = List.of("M", "O", "H", "L", "N", "S");
    private static final Map<String, String> MEANING = Map.of(
            "M", "the desk itself", "O", "an owner", "H", "a hand", "L", "a looker", "N", "nobody", "S", "a sensor");

    @TempDir
    private static Path folder;

    private static NetworkDesk farm;
    private static Map<String, String> cookies;
    private static Map<String, String> bearing;
    private static String byTheDesk;
    private static String byTheHand;

    private record Row(String method, String route, String path, Set<String> may) {
        static List<Row> all() {
            return TABLE.lines()
                    .map(line -> line.split("\\s*\\|\\s*", -1))
                    .map(cells -> new Row(
                            cells[0].split("\\s+", -1)[0],
                            cells[0].split("\\s+", -1)[1],
                            cells[1],
                            Stream.of(cells[2].split(" ", -1))
                                    .filter(v -> !v.equals("-"))
                                    .collect(Collectors.toSet())))
                    .toList();
        }
    }

    @BeforeAll
    static void openTheDesk() throws IOException {
        farm = new NetworkDesk(folder);
        cookies = Map.of(
                "O", farm.joined(Role.OWNER, "Office"),
                "H", farm.joined(Role.HAND, "Wren’s phone"),
                "L", farm.joined(Role.LOOKER, "Hall screen"),
                "N", "",
                "S", "");
        bearing = Map.of("Authorization", "Bearer " + farm.sensor("Shelf 2", Quantity.HUMIDITY, ReadingUnit.PERCENT));
        byTheHand = noteByHand();
        byTheDesk = noteAtDesk();
    }

    private static String noteByHand() throws IOException {
        return noted(
                farm.phone("POST", "/notes/remark", String.valueOf(cookies.get("H")), Map.of(), remark("wire needed")));
    }

    private static String noteAtDesk() throws IOException {
        return noted(farm.here("POST", "/notes/remark", remark("north pen is wet")));
    }

    @AfterAll
    static void closeTheDesk() {
        farm.close();
    }

    private static String remark(String text) {
        return "text=" + URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String noted(PlainHttp.Answer answer) {
        assertEquals(303, answer.status(), answer.body());
        return answer.header("Location").replaceFirst("/entries/([^?]+).*", "$1");
    }

    @Test
    void everyRoute_hasItsRow_andEveryRowItsRoute() {
        assertEquals(Set.of(), withoutRow(farm.desk));
        var gone = new TreeSet<>(routesOfRows());
        gone.removeAll(farm.desk.routes().keySet());
        assertEquals(Set.of(), gone);
    }

    @Test
    void route_thatIsAddedWithoutARow_isFound() {
        Pages planted = routes -> routes.write("/api-of-somebody", May.ANYBODY, visit -> Answer.onward("/"));
        try (var desk = Desk.open(new Setup(() -> "Larkfield", Locale.ENGLISH, 0, List.of(planted)))) {
            assertEquals(Set.of("POST /api-of-somebody"), withoutRow(desk));
        }
    }

    private static Set<String> withoutRow(Desk desk) {
        var routes = new TreeSet<>(desk.routes().keySet());
        routes.removeAll(routesOfRows());
        return routes;
    }

    private static Set<String> routesOfRows() {
        return Row.all().stream().map(row -> row.method() + " " + row.route()).collect(Collectors.toSet());
    }

    @Test
    void everyRoute_letsInWhomTheTableNames_andNobodyElse() throws IOException {
        var wrong = new ArrayList<String>();
        for (var row : Row.all()) {
            for (var visitor : VISITORS) {
                // What is taken back is gone for the next, so each has one of its own to take back.
                var path = row.path().endsWith("/withdraw") && row.method().equals("POST")
                        ? row.path().replace("$DESKS", noteAtDesk()).replace("$HANDS", noteByHand())
                        : row.path().replace("$DESKS", byTheDesk).replace("$HANDS", byTheHand);
                var status = ask(visitor, row.method(), path).status();
                var expected = row.may().contains(visitor);
                // Who is no person is asked who it is; and where only tokens count, everybody else is nobody.
                var isUnknown =
                        visitor.equals("N") || visitor.equals("S") || row.may().equals(Set.of("S"));
                var turnedAway = isUnknown ? status == 401 : status == 403;
                if (expected == turnedAway || (expected && (status == 401 || status == 403)) || status >= 500) {
                    wrong.add(MEANING.get(visitor) + " at " + row.method() + " " + row.path() + ": " + status);
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    private static PlainHttp.Answer ask(String visitor, String method, String path) throws IOException {
        return visitor.equals("M")
                ? farm.here(method, path, "")
                : farm.phone(
                        method,
                        path,
                        String.valueOf(cookies.get(visitor)),
                        visitor.equals("S") ? bearing : Map.of(),
                        "");
    }

    /** At the machine itself a token takes nothing away and gives nothing: without one not even the owner tells readings. */
    @Test
    void token_countsForReadingsAlone_alsoAtTheMachineItself() throws IOException {
        var port = farm.desk.address().getPort();
        assertEquals(401, farm.here("POST", "/api/readings", "47").status());
        assertEquals(
                200, PlainHttp.ask(port, "POST", "/api/readings", bearing, "47").status());
        assertEquals(
                405, PlainHttp.ask(port, "GET", "/api/readings", bearing, "").status());
    }

    @Test
    void entry_saysWhichDeviceItWasNotedOn() {
        var devices = farm.store.all().stream()
                .filter(kept -> kept.entry().payload() instanceof Remarked)
                .collect(Collectors.toMap(
                        kept -> kept.entry().id().toString(),
                        kept -> kept.entry().device(),
                        (a, b) -> b));

        assertEquals(new DeviceName("Wren’s phone"), devices.get(byTheHand));
        assertEquals(new DeviceName("desk"), devices.get(byTheDesk));
    }

    /** The guide tells the keeper the same table: what each row of it says is held against this one. */
    @Test
    void guide_saysTheSame() throws IOException {
        var guide = Files.readString(Path.of("../docs/guide/onto-the-local-network.md"));
        var told = guide.lines()
                .filter(line -> line.startsWith("| ") && line.contains("`"))
                .map(line -> line.split("\\s*\\|\\s*", -1))
                .toList();
        assertNotEquals(0, told.size());
        var seen = new TreeSet<String>();
        for (var cells : told) {
            var may = new TreeSet<String>();
            for (int i = 0; i < VISITORS.size(); i++) {
                if (cells[i + 3].equals("yes")) {
                    may.add(VISITORS.get(i));
                }
            }
            for (var path : cells[2].split("`[, ]*`|`", -1)) {
                if (!path.isBlank()) {
                    seen.add(path);
                    assertEquals(may, new TreeSet<>(row(path).may()), path + " in the guide");
                }
            }
        }
        var paths = Row.all().stream()
                .map(row -> row.method() + " " + row.path())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(paths, seen);
    }

    private static Row row(String methodAndPath) {
        return Row.all().stream()
                .filter(row -> (row.method() + " " + row.path()).equals(methodAndPath))
                .findFirst()
                .orElseThrow(() -> new AssertionError("The guide has " + methodAndPath + ", which is no row here"));
    }
}
