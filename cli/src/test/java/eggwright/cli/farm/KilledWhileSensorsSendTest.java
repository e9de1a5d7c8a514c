package eggwright.cli.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.cli.Run;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Readings;
import eggwright.store.DataFolder;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The desk as a process of its own, as a keeper starts it: what it acknowledged is there when it was killed outright. */
class KilledWhileSensorsSendTest {
    private static final Instant FIRST = Instant.parse("2026-05-12T00:00:00Z");
    private static final int MESSAGES = 40;
    private static final int READINGS_EACH = 25;

    @TempDir
    private Path folder;

    private final List<Process> desks = new ArrayList<>();

    @AfterEach
    void end() throws InterruptedException {
        for (var desk : desks) {
            desk.destroyForcibly().waitFor();
        }
    }

    private String data() {
        return folder.resolve("farm").toString();
    }

    private String token() {
        assertEquals(0, Run.of("simulate", "--seed", "7", "--out", data()).status());
        var added = Run.of(
                "sensors",
                "add",
                "--name",
                "Shelf 2",
                "--machine",
                "Setter",
                "--reads",
                "humidity_pct",
                "--json",
                "--data",
                data());
        var found = Pattern.compile("\"token\":\"([^\"]+)\"").matcher(added.out());
        assertTrue(found.find(), added.out() + added.err());
        return found.group(1);
    }

    private Readings kept(String sensor) {
        try (var store = DataFolder.at(Path.of(data())).read()) {
            return store.readings().channels().stream()
                    .filter(c -> c.sensor().text().equals(sensor))
                    .findFirst()
                    .map((Channel c) -> store.readings().between(c, Instant.EPOCH, Instant.now()))
                    .orElse(Readings.NONE);
        }
    }

    @Test
    void readingsThatWereAcknowledged_areThere_afterTheDeskWasKilledInTheMidst() throws Exception {
        var token = token();
        int port = freePort();
        var desk = start(port);
        int acknowledged = 0;
        try (var sensor = HttpClient.newHttpClient()) {
            for (int message = 0; message < MESSAGES; message++) {
                if (message == MESSAGES / 2) {
                    Thread.ofVirtual().start(desk::destroyForcibly);
                }
                acknowledged = sent(sensor, port, token, message) ? message + 1 : acknowledged;
            }
        }
        desk.waitFor();
        assertEquals(137, desk.exitValue(), "killed, and not asked to stop");
        assertTrue(acknowledged >= MESSAGES / 2 && acknowledged < MESSAGES, "killed in the midst: " + acknowledged);

        var kept = kept("Shelf 2");

        assertTrue(kept.count() >= acknowledged * READINGS_EACH, kept.count() + " of " + acknowledged);
        assertEquals(0, kept.count() % READINGS_EACH, "a message is there whole or not at all");
        for (int i = 0; i < kept.count(); i++) {
            assertEquals(FIRST.plusSeconds(60L * i), kept.at(i));
            assertEquals(value(i), kept.value(i));
        }
    }

    private static double value(int number) {
        return 40 + number % 20;
    }

    private static boolean sent(HttpClient sensor, int port, String token, int message) throws InterruptedException {
        var body = new ArrayList<String>();
        for (int i = message * READINGS_EACH; i < (message + 1) * READINGS_EACH; i++) {
            body.add("{\"value\":" + value(i) + ",\"at\":\"" + FIRST.plusSeconds(60L * i) + "\"}");
        }
        try {
            var answer = sensor.send(
                    HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/api/readings"))
                            .header("Authorization", "Bearer " + token)
                            .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                            .build(),
                    BodyHandlers.ofString());
            assertEquals(200, answer.statusCode(), answer.body());
            return true;
        } catch (IOException gone) {
            return false;
        }
    }

    /** Columns confirmed once by command; then a file is laid into the folder of a desk that is open. */
    @Test
    void fileInTheWatchedFolder_isTakenByItself_andNoSensorIsAddedBesideAnOpenDesk() throws Exception {
        token();
        var header = "Time,T9,RH\n";
        var first = Files.writeString(folder.resolve("first.csv"), header + "2026-05-11 06:00,99.5,55\n");
        var imported = Run.of("import", "readings", first.toString(), "--machine", "Hatcher", "--data", data());
        assertEquals(0, imported.status(), imported.err());
        var watched = Files.createDirectories(folder.resolve("loggers/Setter"));
        start(freePort(), "--watch", folder.resolve("loggers").toString());
        var refused = Run.of(
                "sensors", "add", "--name", "x", "--machine", "Setter", "--reads", "humidity_pct", "--data", data());
        assertEquals(2, refused.status());

        var file = Files.writeString(
                watched.resolve("may.csv"), header + "2026-05-12 06:00,99.5,55\n2026-05-12 06:01,99.6,55\n");

        until(() -> kept("logger").count() > 0 && setterRead() == 2);
        assertTrue(Files.exists(file));
    }

    /** A real broker, as Debian packs it, in its mode for this machine alone; passed over with a word where there is none. */
    @Test
    void messagesOfABroker_becomeReadings_ofADeskThatWasToldOfIt() throws Exception {
        var program = Stream.of("/usr/sbin/mosquitto", "/usr/local/sbin/mosquitto", "/opt/homebrew/sbin/mosquitto")
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
        var missing = "No Mosquitto was found. On Debian: apt-get install mosquitto";
        if ("required".equals(System.getProperty("eggwright.broker"))) {
            assertTrue(program.isPresent(), missing);
        }
        Assumptions.assumeTrue(program.isPresent(), missing);
        var token = token();
        int brokersPort = freePort();
        start(freePort(), "--mqtt", "mqtt://127.0.0.1:" + brokersPort, "--mqtt-topic", "larkfield");
        // The desk is there first, and waits for the broker.
        desks.add(new ProcessBuilder(program.orElseThrow().toString(), "-p", Integer.toString(brokersPort))
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("mosquitto.log").toFile())
                .start());
        until(() -> {
            try (var sensor = new MqttClient(
                    "tcp://127.0.0.1:" + brokersPort, "shelf-" + System.nanoTime(), new MemoryPersistence())) {
                sensor.connect();
                sensor.publish("larkfield/" + token, "47.5".getBytes(StandardCharsets.UTF_8), 1, false);
                sensor.disconnect();
                return kept("Shelf 2").count() > 0;
            } catch (MqttException notYet) {
                return false;
            }
        });
        assertEquals(47.5, kept("Shelf 2").value(0));
    }

    private int setterRead() {
        try (var store = DataFolder.at(Path.of(data())).read()) {
            return store.readings().channels().stream()
                    .filter(c -> c.place().toString().contains("Setter")
                            && c.quantity().isTemperature())
                    .mapToInt(c -> store.readings()
                            .between(c, Instant.parse("2026-05-12T00:00:00Z"), Instant.parse("2026-05-13T00:00:00Z"))
                            .count())
                    .sum();
        }
    }

    private static void until(BooleanSupplier holds) throws InterruptedException {
        for (int tries = 0; tries < 300; tries++) {
            if (holds.getAsBoolean()) {
                return;
            }
            TimeUnit.MILLISECONDS.sleep(100);
        }
        throw new AssertionError("It did not come within 30 s");
    }

    private Process start(int port, String... more) throws IOException, InterruptedException {
        var words = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "eggwright.cli.Main",
                "serve",
                "--data",
                data(),
                "--port",
                Integer.toString(port)));
        words.addAll(List.of(more));
        var log = folder.resolve("desk.log");
        var started = new ProcessBuilder(words)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        desks.add(started);
        for (int tries = 0; tries < 300; tries++) {
            if (!started.isAlive()) {
                throw new AssertionError("The desk did not open: " + Files.readString(log));
            }
            try {
                new Socket(InetAddress.getLoopbackAddress(), port).close();
                return started;
            } catch (IOException notYet) {
                TimeUnit.MILLISECONDS.sleep(100);
            }
        }
        throw new AssertionError("The desk did not open within 30 s: " + Files.readString(log));
    }

    private static int freePort() throws IOException {
        try (var socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }
}
