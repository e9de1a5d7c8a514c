package eggwright.cli.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.cli.Run;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sensors by command, and what serve is told of a broker and a folder, up to where it would open its port. */
class SensorsCommandTest {
    private static final Pattern ADDED =
            Pattern.compile("\\{\"id\":\"([0-9a-f]{16})\",\"name\":\"Shelf 2\",\"where\":\"Setter\","
                    + "\"reads\":\"air_temperature_f\",\"token\":\"([A-Za-z0-9_-]{43})\"}");

    @TempDir
    private Path folder;

    private String data = "";

    @BeforeEach
    void farmWithASetter() {
        data = folder.resolve("farm").toString();
        assertEquals(0, Run.of("simulate", "--seed", "7", "--out", data).status());
    }

    private Run sensors(String... words) {
        var all = new ArrayList<>(List.of("sensors"));
        all.addAll(List.of(words));
        all.addAll(List.of("--data", data));
        return Run.of(all.toArray(String[]::new));
    }

    private Run add(String name, String machine, String reads) {
        return sensors("add", "--name", name, "--machine", machine, "--reads", reads, "--json");
    }

    @Test
    void sensor_isAdded_listed_andRevoked_andItsTokenShownOnce() throws IOException {
        var added = add("Shelf 2", "Setter", "air_temperature_f");
        assertEquals(0, added.status(), added.err());
        var found = ADDED.matcher(added.out().strip());
        assertTrue(found.matches(), added.out());
        assertTrue(added.err().contains("shown this once"), added.err());

        var listed = sensors("list", "--json").out();
        assertTrue(listed.contains("\"id\":\"" + found.group(1) + "\""), listed);
        assertTrue(listed.contains("\"last_read_at\":\"\",\"revoked_at\":\"\""), listed);
        assertFalse(listed.contains(found.group(2)), "never again");
        try (var files = Files.list(Path.of(data))) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                assertFalse(
                        new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).contains(found.group(2)),
                        "and it lies in no file: " + file);
            }
        }

        var revoked = sensors("revoke", "--id", found.group(1), "--json");
        assertEquals(0, revoked.status(), revoked.err());
        assertTrue(revoked.out().matches("(?s).*\"revoked_at\":\"20[^\"]+Z\".*"), revoked.out());
        assertTrue(sensors("list").out().contains("revoked"), sensors("list").out());
        assertEquals(2, sensors("revoke", "--id", found.group(1)).status(), "once");
    }

    @Test
    void list_ofNone_saysSo() {
        assertTrue(sensors("list").out().contains("No sensor sends by itself."));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    Shelf 2 | Seter  | air_temperature_f | Is it "Setter"?
                    Shelf 2 | Setter | warmth            | is nothing that a sensor reads
                    Shelf 2 | Setter | time              | is nothing that a sensor reads
                    ''      | Setter | humidity_pct      | is no name for a sensor
                    """)
    void whatIsWrong_isNamed_andNothingIsAdded(String name, String machine, String reads, String said) {
        var refused = add(name, machine, reads);
        assertEquals(2, refused.status());
        assertTrue(refused.err().contains(said), refused.err());
        assertTrue(sensors("list").out().contains("No sensor"));
    }

    @Test
    void otherWords_andWhatIsMissing_areSaid() {
        assertTrue(sensors("burn").err().contains("Write list, add or revoke."));
        assertTrue(sensors("add", "--name", "x").err().contains("Still needed: --reads"));
        add("Shelf 2", "Setter", "air_temperature_f");
        assertTrue(add("Shelf 2", "Setter", "air_temperature_f").err().contains("reads the same there already"));
    }

    private Run serve(String... words) {
        var all = new ArrayList<>(List.of("serve", "--data", data, "--port", "99999"));
        all.addAll(List.of(words));
        return Run.of(all.toArray(String[]::new));
    }

    @Test
    void serve_isToldOfAFolderThatIsNotThere() {
        var said = serve("--watch", folder.resolve("nowhere").toString()).err();
        assertTrue(said.contains("--watch: there is no folder"), said);
    }

    @Test
    void serve_isToldWhatGoesWithABroker() throws IOException {
        assertTrue(serve("--mqtt-user", "desk").err().contains("--mqtt-user goes with --mqtt."));
        assertTrue(serve("--mqtt", "broker:1883").err().contains("Write mqtts://HOST:8883"));
        assertTrue(serve("--mqtt", "mqtt://b", "--mqtt-topic", "#").err().contains("is no topic to listen to"));
        var twoLines = Files.writeString(folder.resolve("two"), "warm\neggs\n").toString();
        assertTrue(serve("--mqtt", "mqtt://b", "--mqtt-user", "desk", "--mqtt-password-file", twoLines)
                .err()
                .contains("has to hold the password on one line"));
        var one = Files.writeString(folder.resolve("one"), "warm eggs\n").toString();
        assertTrue(serve("--mqtt", "mqtt://b", "--mqtt-password-file", one)
                .err()
                .contains("--mqtt-password-file goes with --mqtt-user"));
        assertTrue(serve("--mqtt", "mqtt://b", "--mqtt-ca", one).err().contains("--mqtt-ca goes with mqtts://"));
        assertTrue(
                serve("--mqtt", "mqtt://b", "--mqtt-user", "desk", "--mqtt-password-file", one)
                        .err()
                        .contains("\"99999\" is not a port"),
                "and what is right goes on to the next");
    }
}
