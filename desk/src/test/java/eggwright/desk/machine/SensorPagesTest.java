package eggwright.desk.machine;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.desk.Desk;
import eggwright.desk.Kept;
import eggwright.desk.PlainHttp;
import eggwright.desk.farm.DemoDesk;
import java.io.IOException;
import java.net.URLEncoder;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sensors of the invented farm, and what can be said of them. */
final class SensorPagesTest {
    private static final String LOGGER =
            "sensor_place=in_machine&machine=Setter&sensor=logger&quantity=air_temperature";
    private static final String PROBE = "sensor_place=egg_room&sensor=by+the+door&quantity=air_temperature";
    private final Desk desk = DemoDesk.open();

    @AfterEach
    void close() {
        desk.close();
    }

    private PlainHttp.Answer ask(String method, String path, String form) throws IOException {
        int port = desk.address().getPort();
        return PlainHttp.ask(port, method, path, Map.of("Origin", "http://127.0.0.1:" + port), form);
    }

    private String page(String path) throws IOException {
        var answer = ask("GET", path, "");
        assertEquals(200, answer.status(), answer.body());
        return answer.body();
    }

    private String noted(String kind, String form) throws IOException {
        var answer = ask("POST", "/notes/" + kind, form);
        assertEquals(303, answer.status(), answer.body());
        return answer.header("Location").replaceFirst("\\?.*", "");
    }

    private String refused(String kind, Map<String, String> fields) throws IOException {
        var form = fields.entrySet().stream()
                .map(f -> f.getKey() + "=" + URLEncoder.encode(f.getValue(), UTF_8))
                .collect(Collectors.joining("&"));
        var answer = ask("POST", "/notes/" + kind, form);
        assertEquals(422, answer.status(), answer.body());
        fields.values().forEach(typed -> assertTrue(answer.body().contains(typed), typed + " is lost"));
        return answer.body();
    }

    @ParameterizedTest
    @CsvSource({
        "/machines/Setter/sensors, setter-sensors",
        "/egg-room/sensors, egg-room-sensors",
        "/sensors, sensor-places"
    })
    void page_isDrawnAsKept(String path, String name) throws IOException {
        Kept.samePage("machine/" + name + ".html", page(path));
    }

    @Test
    void placeThatNobodyKnows_isNotThere() throws IOException {
        assertEquals(404, ask("GET", "/machines/Toaster/sensors", "").status());
    }

    /** From the page of the sensors to the form, into the book, and back by withdrawing it. */
    @Test
    void heldReadings_areLetIn_byTheirLink_andHeldAgain_whenTheNoteIsWithdrawn() throws IOException {
        var before = page("/machines/Setter/sensors");
        assertTrue(before.contains("185.0\u00a0°F"), before);
        var link = Pattern.compile("href=\"(/notes/readings-released[^\"]+)\"").matcher(before);
        assertTrue(link.find(), before);
        var path = link.group(1).replace("&amp;", "&");
        var form = page(path);
        assertTrue(form.contains("value=\"2027-05-11T12:00\""), form);
        assertTrue(form.contains("value=\"2027-05-11T12:01\""), form);

        var note = noted("readings-released", path.substring(path.indexOf('?') + 1) + "&why=it+was+true");
        assertTrue(page(note).contains("/machines/Setter/sensors"));
        var after = page("/machines/Setter/sensors");
        assertFalse(after.contains("Let these in"), after);
        assertTrue(after.contains("is let in. it was true"), after);
        assertTrue(page("/machines/Setter?span=day").contains("Held back: 0."));

        assertEquals(303, ask("POST", note + "/withdraw", "why=no").status());
        assertEquals(before, page("/machines/Setter/sensors"));
    }

    @Test
    void comparison_isAdded_onTheSensorsPage_andInTheAirOfTheMachine() throws IOException {
        noted("sensor-compared", LOGGER + "&showed=98.0F&reference=99.8F&counts_from=2027-05-01T08:00&compared_by=ice");
        var sensors = page("/machines/Setter/sensors");
        assertTrue(sensors.contains("+1.8\u00a0°F"), sensors);
        assertTrue(sensors.contains("by ice"), sensors);
        // The logger says 99.6 or so; what counts is 1.8 more.
        var machine = page("/machines/Setter?span=day");
        assertTrue(machine.contains("<b>101."), machine);
    }

    @Test
    void sensorSetAside_countsForNothing_untilItIsBelievedAgain() throws IOException {
        assertTrue(page("/egg-room/sensors").contains("drifts, or was moved"));
        noted("sensor-trust-changed", PROBE + "&trust=set_aside&counts_from=2027-03-01T08:00&why=bent");
        var aside = page("/egg-room/sensors");
        assertFalse(aside.contains("drifts, or was moved"), aside);
        assertTrue(aside.contains("it counts for nothing"), aside);
        assertTrue(aside.contains("Believe it again"), aside);
        noted("sensor-trust-changed", PROBE + "&trust=taken_back&counts_from=2027-03-02T08:00");
        assertTrue(page("/egg-room/sensors").contains("drifts, or was moved"));
    }

    @Test
    void wordOnASensorThatNeverRead_isShown_soThatTheNameCanBeMended() throws IOException {
        noted(
                "sensor-compared",
                "sensor_place=egg_room&sensor=loger&quantity=humidity&showed=70&reference=74&compared_by=salt");
        var room = page("/egg-room/sensors");
        assertTrue(room.contains("loger, humidity"), room);
        assertTrue(room.contains("none of this name ever read anything here"), room);
        assertTrue(room.contains("It showed 70.0% where the reference showed 74.0%"), room);
    }

    @Test
    void readingByHand_thatIsFarOff_isOfferedAsTheReference() throws IOException {
        assertFalse(page("/machines/Setter/sensors").contains("Take the last reading by hand"));
        noted("climate-noted", "machine=Setter&dry=101.6F&happened=2027-05-12T11:30");
        var sensors = page("/machines/Setter/sensors");
        var link = Pattern.compile("href=\"(/notes/sensor-compared[^\"]+reference[^\"]+)\"")
                .matcher(sensors);
        assertTrue(link.find(), sensors);
        var form = page(link.group(1).replace("&amp;", "&"));
        assertTrue(form.contains("value=\"101.6F\""), form);
        assertTrue(form.contains("value=\"2027-05-12T11:30\""), form);
    }

    @Test
    void loggerSetAside_isNamedOnThePageOfItsMachine() throws IOException {
        noted("sensor-trust-changed", LOGGER + "&trust=set_aside&counts_from=2027-05-12T06:00&why=wet");
        assertTrue(page("/machines/Setter?span=day").contains("for all or some of this time: logger (temperature)."));
        assertTrue(page("/machines/Setter?span=day").contains("Silences: 0."));
        // The keeper's own reading of the morning takes its place.
        assertTrue(page("/machines/Setter?span=day").contains("read by hand, Wed 12 May 07:00"));
    }

    private static Map<String, String> fields(String... pairs) {
        var fields = new LinkedHashMap<String, String>();
        for (int i = 0; i < pairs.length; i += 2) {
            fields.put(pairs[i], pairs[i + 1]);
        }
        return fields;
    }

    @Test
    void comparisonWithASlip_isRefused_besideItsField_andKeepsWhatWasTyped() throws IOException {
        var sensor = fields(
                "sensor_place", "in_machine", "machine", "Setter", "sensor", "logger", "quantity", "air_temperature");
        var half = new LinkedHashMap<>(sensor);
        half.put("showed", "99.1F");
        assertTrue(refused("sensor-compared", half).contains("Write what the reference showed"));
        var mixed = new LinkedHashMap<>(half);
        mixed.put("reference", "52%");
        assertTrue(refused("sensor-compared", mixed).contains("does not measure in"));
        var far = new LinkedHashMap<>(half);
        far.put("reference", "37.5F");
        assertTrue(refused("sensor-compared", far).contains("is broken, or a unit is wrong"));
        var nowhere = new LinkedHashMap<>(half);
        nowhere.put("reference", "99.5F");
        nowhere.put("sensor_place", "brooder");
        assertTrue(refused("sensor-compared", nowhere).contains("It hangs in no machine"));
        assertTrue(refused(
                        "readings-released",
                        fields(
                                "sensor_place",
                                "in_machine",
                                "machine",
                                "Setter",
                                "sensor",
                                "logger",
                                "quantity",
                                "humidity",
                                "held_from",
                                "2027-05-11T12:00",
                                "held_to",
                                "2027-05-11T11:00"))
                .contains("The earlier one comes first"));
    }

    /** What a keeper types on the round, wet-handed: each slip is asked about beside its field. */
    @ParameterizedTest
    @CsvSource({
        "99.5C, 30C, 55, Fahrenheit? Then write 99.5F.",
        "99.5F, 86C, 55, Fahrenheit? Then write 86F.",
        "37.5F, 30C, 55, Celsius? Then write 37.5C.",
        "99.5F, 100F, 55, 'The wet bulb, 100F, is above the dry bulb, 99.5F.'",
        "99.5F, 86F, 120, 120 % is outside 0 to 100 %.",
        "99.5F, 86F, -4, -4 % is outside 0 to 100 %.",
        "99.5, 86F, 55, “99.5” has no unit.",
        "212F, 86F, 55, “212F” is hotter than any machine. Look at the number"
    })
    void readingByHand_withASlip_isAskedAbout(String dry, String wet, String humidity, String said) throws IOException {
        var page = refused(
                "climate-noted",
                fields("machine", "Setter", "dry", dry, "wet", wet, "humidity_pct", humidity, "note", "in a hurry"));
        assertTrue(page.contains(said), page);
    }

    @Test
    void readingByHand_thatIsColdOrSaturated_isKept() throws IOException {
        noted("climate-noted", "machine=Setter&dry=3.1C&wet=3.1C&humidity_pct=100");
        noted("climate-noted", "machine=Setter&dry=60F&wet=55F");
    }
}
