package eggwright.desk.intake;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.Readings;
import eggwright.climate.reading.SensorName;
import eggwright.desk.Desk;
import eggwright.desk.Kept;
import eggwright.intake.folder.WatchedFile.State;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A logger's file, brought as a browser without script brings it. */
final class FilePagesTest {
    private static final String NIGHT = """
            Time,T1,RH
            2027-05-10 22:00,99.5,55
            2027-05-10 22:10,99.6,54
            2027-05-10 22:20,185.0,54
            2027-05-10 23:50,99.4,
            """;

    @TempDir
    private Path watched;

    private IntakeDesk farm;

    @BeforeEach
    void openTheDesk() {
        farm = new IntakeDesk(watched);
    }

    @AfterEach
    void closeTheDesk() {
        farm.close();
    }

    private String brought(String name, String text, String place) throws IOException, InterruptedException {
        var answer = farm.bring(name, text.getBytes(UTF_8), place);
        assertEquals(303, answer.statusCode(), answer.body());
        return answer.headers().firstValue("Location").orElseThrow();
    }

    /** Of a place that has no readings yet, so that only those of the file are there. */
    private Readings air() {
        return farm.readings.between(
                new Channel(
                        new ReadingPlace.Brooder(), SensorName.ONLY, Quantity.AIR_TEMPERATURE, ReadingUnit.FAHRENHEIT),
                Instant.EPOCH,
                Instant.parse("2028-01-01T00:00:00Z"));
    }

    private static String form(String place, String time, String air, String humidity, String more) {
        return "place=" + place + "&column.0=" + time + "&column.1=" + air + "&column.2=" + humidity
                + "&dates=as-found&zone=America%2FChicago" + more;
    }

    private static final String USUAL = form("brooder", "time", "air_temperature_f", "humidity_pct", "");

    @Test
    void file_isLookedAtFirst_andNothingIsKept() throws Exception {
        var path = brought("night.csv", NIGHT, "brooder");
        var look = farm.get(path);
        assertEquals(200, look.statusCode(), look.body());
        Kept.samePage("intake/file.html", look.body().replaceAll("/readings/files/[0-9a-f]{32}", "/readings/files/ID"));
        assertTrue(air().isEmpty());
    }

    @Test
    void file_isTaken_whenAPersonSaysYes_andWhatIsHeldBackIsShown() throws Exception {
        var path = brought("night.csv", NIGHT, "brooder");
        var taken = farm.post(path, USUAL);
        assertEquals(303, taken.statusCode(), taken.body());
        assertEquals(4, air().count());
        assertEquals(Instant.parse("2027-05-11T03:00:00Z"), air().at(0), "ten in the evening in Chicago");
        var page = farm.get(path).body();
        Kept.samePage("intake/taken.html", page);
        assertTrue(page.contains("4 rows: 7 new readings, 0 known already."), page);
        assertTrue(page.contains("One is held back"), page);
        assertTrue(page.contains("185\u00a0°F") || page.contains("185 °F"), page);

        assertEquals(303, farm.post(path, USUAL).statusCode(), "sent twice");
        assertEquals(4, air().count());

        var again = brought("night.csv", NIGHT, "brooder");
        farm.post(again, USUAL);
        assertTrue(farm.get(again).body().contains("no new reading, 7 known already."));
    }

    @Test
    void column_isGivenAnotherMeaning_inTheForm_andThatIsRemembered() throws Exception {
        var path = brought("night.csv", NIGHT.replace("185.0", "86.0"), "brooder");
        var wet = form("brooder", "time", "wet_bulb_f", "left", "");
        var look = farm.post(path, wet + "&act=look");
        assertEquals(200, look.statusCode());
        assertTrue(look.body().contains("value=\"wet_bulb_f\" selected"), look.body());
        assertTrue(air().isEmpty());
        assertEquals(303, farm.post(path, wet).statusCode());
        assertTrue(air().isEmpty());
        assertEquals(
                4,
                farm.readings
                        .between(
                                new Channel(
                                        new ReadingPlace.Brooder(),
                                        SensorName.ONLY,
                                        Quantity.WET_BULB,
                                        ReadingUnit.FAHRENHEIT),
                                Instant.EPOCH,
                                Instant.parse("2028-01-01T00:00:00Z"))
                        .count());
        var next = brought("next.csv", "Time,T1,RH\n2027-05-11 22:00,86.1,50\n", "brooder");
        assertTrue(farm.get(next).body().contains("value=\"wet_bulb_f\" selected"), "remembered");
    }

    /** 36 may be either; and a person who says °C of 99.5 is asked once more. */
    @Test
    void unitThatLookingDoesNotTell_isAsked_andAWrongWordIsNotTaken() throws Exception {
        var cold = NIGHT.replace("99.5", "34.5")
                .replace("99.6", "34.6")
                .replace("185.0", "34.4")
                .replace("99.4", "34.4");
        var path = brought("cold.csv", cold, "brooder");
        var look = farm.get(path).body();
        assertTrue(look.contains("may be °C or °F. Choose what is right below, then look again."), look);
        assertFalse(look.contains("--columns"), "no option of a command on a page");
        assertEquals(
                422,
                farm.post(path, form("brooder", "time", "", "humidity_pct", "")).statusCode());
        assertTrue(air().isEmpty());
        assertEquals(
                303,
                farm.post(path, form("brooder", "time", "air_temperature_c", "humidity_pct", ""))
                        .statusCode());

        var warm = brought("warm.csv", NIGHT.replace("T1", "T2"), "brooder");
        var refused = farm.post(warm, form("brooder", "time", "air_temperature_c", "humidity_pct", ""));
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("is it Fahrenheit"), refused.body());
        assertTrue(air().isEmpty());
    }

    @Test
    void oneWrongCell_keepsNothing_andIsNamed() throws Exception {
        var path = brought("spoilt.csv", NIGHT + "2027-05-11 00:00,warm,55\n", "brooder");
        var refused = farm.post(path, USUAL);
        assertEquals(422, refused.statusCode());
        assertTrue(
                refused.body().contains("row 6, column &#34;T1&#34;")
                        || refused.body().contains("row 6, column"),
                refused.body());
        assertTrue(air().isEmpty());
    }

    @Test
    void place_isAskedFor_unlessTheFileNamesIt() throws Exception {
        var path = brought("night.csv", NIGHT, "");
        var asked = farm.post(path, form("", "time", "air_temperature_f", "humidity_pct", ""));
        assertEquals(422, asked.statusCode());
        assertTrue(asked.body().contains("Choose where it hangs."), asked.body());
        var none = farm.post(path, form("in+the+file", "time", "air_temperature_f", "humidity_pct", ""));
        assertEquals(422, none.statusCode());
        assertTrue(none.body().contains("No column holds the name of a machine."), none.body());
    }

    @Test
    void zoneOfTheLogger_isChosen() throws Exception {
        var path = brought("night.csv", NIGHT, "brooder");
        assertEquals(
                303, farm.post(path, USUAL.replace("America%2FChicago", "Z")).statusCode());
        assertEquals(Instant.parse("2027-05-10T22:00:00Z"), air().at(0));
        var next = brought("next.csv", "Time,T1,RH\n2027-05-11 22:00,99.5,50\n", "brooder");
        assertTrue(farm.get(next).body().contains("value=\"Z\" selected"), "and remembered with the columns");
    }

    @Test
    void fileThatIsNoTable_isSaidSo() throws Exception {
        var look =
                farm.get(brought("photo.csv", "no table at all\n", "brooder")).body();
        assertTrue(look.contains("holds no row with a time and a number"), look);
        assertFalse(look.contains("Take it"), "there is nothing to take");
        var empty = farm.get(brought("empty.csv", "", "brooder")).body();
        assertTrue(empty.contains("is empty"), empty);
        var nothing = farm.bring("", new byte[0], "brooder");
        assertEquals(422, nothing.statusCode());
        assertTrue(nothing.body().contains("No file was chosen."), nothing.body());
    }

    @Test
    void name_thatLeadsElsewhere_leadsNowhere() throws Exception {
        var look = farm.get(brought("../../etc/night.csv", NIGHT, "brooder"));
        assertEquals(200, look.statusCode());
        assertTrue(look.body().contains("How night.csv would be read"), look.body());
    }

    /** One byte more than 200 MB: said in words, read to its end and thrown away, with nothing held in memory. */
    @Test
    void fileThatIsTooLarge_isToldSo() throws Exception {
        long bytes = Desk.LONGEST_FILE_BYTES + (1 << 16) + 1;
        var answer = farm.post(
                "/readings/files",
                "multipart/form-data; boundary=x",
                BodyPublishers.fromPublisher(BodyPublishers.ofInputStream(() -> zeros(bytes)), bytes));
        assertEquals(413, answer.statusCode());
        assertTrue(answer.body().contains("at most 200 MB"), answer.body());
    }

    private static InputStream zeros(long bytes) {
        return new InputStream() {
            private long left = bytes;

            @Override
            public int read() {
                return left-- > 0 ? 0 : -1;
            }

            @Override
            public int read(byte[] into, int from, int most) {
                if (left <= 0) {
                    return -1;
                }
                int some = (int) Math.min(left, most);
                java.util.Arrays.fill(into, from, from + some, (byte) 0);
                left -= some;
                return some;
            }
        };
    }

    /** 3 MB: more than is held in memory. It lies on the disk while it waits, and nothing of it stays behind. */
    @Test
    void longFile_isTaken_andNothingOfItStaysOnTheDisk() throws Exception {
        var rows = new StringBuilder("Time,T7,RH\n");
        var at = Instant.parse("2026-10-01T00:00:00Z");
        for (int i = 0; i < 100_000; i++) {
            rows.append(at.plusSeconds(60L * i)).append(",99.").append(i % 10).append(",55\n");
        }
        var before = temporary();
        var path = brought("long.csv", rows.toString(), "brooder");
        untilTemporary(before.size() + 1);
        assertEquals(303, farm.post(path, USUAL).statusCode());
        assertEquals(100_000, air().count());
        untilTemporary(before.size());
        assertEquals(before, temporary());
    }

    /** The server throws its own copy away when the answer is sent, a moment after it was read here. */
    private static void untilTemporary(int files) throws IOException, InterruptedException {
        for (int tries = 0; tries < 200 && temporary().size() != files; tries++) {
            Thread.sleep(20);
        }
        assertEquals(files, temporary().size());
    }

    private static Set<String> temporary() throws IOException {
        try (var files = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            return files.map(f -> String.valueOf(f.getFileName()))
                    .filter(n -> n.startsWith("eggwright-file")
                            || n.toLowerCase(Locale.ROOT).contains("multipart"))
                    .collect(Collectors.toSet());
        }
    }

    @Test
    void broughtFile_isForgotten_afterTwoHours_orWhenOthersCome() throws Exception {
        var path = brought("night.csv", NIGHT, "brooder");
        for (int i = 0; i < StagingRoom.MOST; i++) {
            assertEquals(200, farm.get(path).statusCode(), "file " + i);
            brought("other.csv", NIGHT, "brooder");
        }
        assertEquals(404, farm.get(path).statusCode());
    }

    @Test
    void watchedFile_isLookedAtWhereItLies_andTakenThere_andThoseLikeItFollow() throws Exception {
        farm.filesLie(watched);
        var sent = farm.post("/readings/watched", "name=Setter%2Fmay.csv");
        assertEquals(303, sent.statusCode(), sent.body());
        var path = sent.headers().firstValue("Location").orElseThrow();
        assertTrue(farm.get(path).body().contains("value=\"Setter\" selected"), "its sub-folder is its place");
        assertEquals(
                303,
                farm.post(path, form("Setter", "time", "air_temperature_f", "humidity_pct", ""))
                        .statusCode());
        assertTrue(Files.exists(watched.resolve("Setter/may.csv")), "it stays where it lies");
        farm.folder.look();
        var states = farm.folder.looked().files().stream()
                .filter(f -> f.name().equals("Setter/may.csv"))
                .map(f -> f.state())
                .toList();
        assertTrue(states.getFirst() instanceof State.Taken, states.toString());
        assertEquals(
                404,
                farm.post("/readings/watched", "name=..%2F..%2Fetc%2Fpasswd").statusCode());
    }

    private String watchedMay() throws IOException, InterruptedException {
        farm.filesLie(watched);
        return farm.post("/readings/watched", "name=Setter%2Fmay.csv")
                .headers()
                .firstValue("Location")
                .orElseThrow();
    }

    @Test
    void watchedFile_thatWasTakenHere_waitsNoMore_andStaysUnderTheMachineThatWasSaid() throws Exception {
        var path = watchedMay();
        var inBrooder = form("brooder", "time", "air_temperature_f", "humidity_pct", "");
        assertEquals(303, farm.post(path, inBrooder).statusCode());
        assertTrue(farm.folder.looked().files().stream()
                .filter(f -> f.name().equals("Setter/may.csv"))
                .allMatch(f -> f.state() instanceof State.Taken));
        assertEquals(
                404, farm.post("/readings/watched", "name=Setter%2Fmay.csv").statusCode(), "it waits no more");
        assertEquals(1, air().count());
        var before = farm.readings.channels();
        farm.folder.look();
        assertEquals(before, farm.readings.channels(), "and is not taken for the setter too");
    }

    @Test
    void watchedFile_thatIsGone_isNotKept_andThatIsSaid() throws Exception {
        var path = watchedMay();
        Files.delete(watched.resolve("Setter/may.csv"));
        var answer = farm.post(path, form("brooder", "time", "air_temperature_f", "humidity_pct", ""));
        assertTrue(answer.statusCode() >= 400 && answer.statusCode() < 500, answer.body());
        assertTrue(air().isEmpty());
    }
}
