package eggwright.intake.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.climate.reading.Readings;
import eggwright.intake.Shelf2;
import eggwright.intake.message.Complaint;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.Optional;
import java.util.SplittableRandom;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against a real broker: what a sensor publishes becomes readings, and what goes wrong is told. */
class BrokerLineTest {
    private static final String ANYBODY = "allow_anonymous true";
    private static final String TIMED = "{\"value\":99.6,\"at\":\"2027-05-12T16:50:00Z\"}";

    @TempDir
    private Path folder;

    private final Shelf2 shelf = new Shelf2();

    private BrokerLine listen(Mosquitto broker, String scheme, Optional<String> user, Optional<String> password) {
        return listen(scheme + "://127.0.0.1:" + broker.port(), user, password, Optional.empty());
    }

    private BrokerLine listen(
            String address, Optional<String> user, Optional<String> password, Optional<Path> authority) {
        return BrokerLine.to(
                Broker.of(address, Broker.USUAL_TOPIC, user, password, authority),
                shelf.intake,
                shelf.clock,
                new SplittableRandom(3));
    }

    private BrokerLine listen(Mosquitto broker) {
        return listen(broker, "mqtt", Optional.empty(), Optional.empty());
    }

    private static void untilListening(BrokerLine line) {
        Mosquitto.until("listening", () -> line.state() instanceof BrokerState.Listening);
    }

    private static BrokerState.Away untilAway(BrokerLine line) {
        Mosquitto.until("away", () -> line.state() instanceof BrokerState.Away);
        return (BrokerState.Away) line.state();
    }

    private static void publish(Mosquitto broker, String topic, String payload, int quality, boolean retained)
            throws MqttException {
        try (var sensor = new MqttClient(
                "tcp://127.0.0.1:" + broker.port(), "shelf-" + System.nanoTime(), new MemoryPersistence())) {
            sensor.connect();
            sensor.publish(topic, payload.getBytes(UTF_8), quality, retained);
            sensor.disconnect();
        }
    }

    private void tell(Mosquitto broker, String payload) throws MqttException {
        publish(broker, "eggwright/readings/" + shelf.token(), payload, 1, false);
    }

    private Readings kept() {
        return shelf.readings.between(Shelf2.CHANNEL, Instant.EPOCH, Shelf2.NOON.plus(Duration.ofDays(9)));
    }

    private long refused() {
        return shelf.intake.tally(shelf.added.sensor()).refused();
    }

    private Complaint.Kind lastReason() {
        return shelf.intake
                .tally(shelf.added.sensor())
                .last()
                .orElseThrow()
                .why()
                .kind();
    }

    @Test
    void numberAndJson_becomeReadings_atAnyQualityOfService() throws Exception {
        try (var broker = Mosquitto.in(folder, ANYBODY);
                var line = listen(broker)) {
            untilListening(line);
            tell(broker, TIMED);
            Mosquitto.until("one reading", () -> kept().count() == 1);
            publish(broker, "eggwright/readings/" + shelf.token(), "99.5", 0, false);
            Mosquitto.until("two readings", () -> kept().count() == 2);
            tell(broker, TIMED);
            Mosquitto.until(
                    "told twice", () -> shelf.intake.tally(shelf.added.sensor()).before() == 1);
            assertEquals(
                    Readings.of(Instant.parse("2027-05-12T16:50:00Z"), 99.6).and(Readings.of(Shelf2.NOON, 99.5)),
                    kept());
        }
    }

    @Test
    void brokerThatDies_isFoundAgain() throws Exception {
        try (var broker = Mosquitto.in(folder, ANYBODY);
                var line = listen(broker)) {
            untilListening(line);
            broker.kill();
            var away = untilAway(line);
            assertEquals(Shelf2.NOON, away.since());
            assertTrue(away.next().isAfter(Shelf2.NOON), "it says when it tries again");
            Mosquitto.until(
                    "a second try that finds nobody",
                    () -> line.state() instanceof BrokerState.Away again
                            && again.tries() >= 2
                            && again.why() == BrokerState.Why.NOT_REACHED);
            broker.startAgain();
            untilListening(line);
            tell(broker, TIMED);
            Mosquitto.until("a reading after the break", () -> kept().count() == 1);
        }
    }

    /** What the broker held back for whoever comes later, and garbage: each told, and the next good one is taken. */
    @Test
    void oldAndSpoiltMessages_areToldAndCounted_andNothingElseIsLost() throws Exception {
        try (var broker = Mosquitto.in(folder, ANYBODY)) {
            publish(broker, "eggwright/readings/" + shelf.token(), "98.0", 1, true);
            publish(broker, "eggwright/readings/nobodys-token", "12", 1, true);
            try (var line = listen(broker)) {
                untilListening(line);
                Mosquitto.until("the retained one is told", () -> refused() == 1);
                assertEquals(Complaint.Kind.RETAINED, lastReason());
                Mosquitto.until(
                        "the unknown one is told", () -> shelf.intake.nobodys().refused() == 1);
                tell(broker, "\u0000\u0001garbage");
                Mosquitto.until("garbage is told", () -> refused() == 2);
                assertEquals(Complaint.Kind.NOT_A_NUMBER, lastReason());
                tell(broker, "9".repeat(300_000));
                Mosquitto.until("a long one is told", () -> refused() == 3);
                assertEquals(Complaint.Kind.TOO_LONG, lastReason());
                tell(broker, TIMED);
                Mosquitto.until("the good one is kept", () -> kept().count() == 1);
                shelf.sensors.revoke(shelf.added.sensor().id());
                tell(broker, "99.5");
                Mosquitto.until("the revoked one is told", () -> refused() == 4);
                assertEquals(Complaint.Kind.REVOKED_TOKEN, lastReason());
                assertEquals(1, kept().count());
                assertInstanceOf(BrokerState.Listening.class, line.state());
            }
        }
    }

    /** Retained with its time it is as good as any: MQTT 3.1.1, section 3.3.1.3. */
    @Test
    void retainedMessageWithItsTime_isTaken() throws Exception {
        try (var broker = Mosquitto.in(folder, ANYBODY)) {
            publish(broker, "eggwright/readings/" + shelf.token(), TIMED, 1, true);
            try (var line = listen(broker)) {
                untilListening(line);
                Mosquitto.until("taken", () -> kept().count() == 1);
            }
        }
    }

    @Test
    void userAndPassword_areAskedFor_andAWrongOneIsToldApartFromNobodyThere() throws Exception {
        var passwords = folder.resolve("passwords");
        var program = Path.of(Mosquitto.program().replace("/sbin/mosquitto", "/bin/mosquitto_passwd"));
        assertEquals(
                0,
                new ProcessBuilder(program.toString(), "-b", "-c", passwords.toString(), "desk", "warm eggs")
                        .inheritIO()
                        .start()
                        .waitFor());
        try (var broker = Mosquitto.in(folder, "allow_anonymous false", "password_file " + passwords)) {
            try (var line = listen(broker, "mqtt", Optional.of("desk"), Optional.of("cold eggs"))) {
                assertEquals(BrokerState.Why.NOT_LET_IN, untilAway(line).why());
            }
            try (var line = listen(broker, "mqtt", Optional.of("desk"), Optional.of("warm eggs"))) {
                untilListening(line);
            }
        }
    }

    /** Return codes of MQTT 3.1.1: 4 and 5 in section 3.2.2.3, 0x80 in section 3.9.3. */
    @ParameterizedTest
    @CsvSource({"0, 128, TOPIC_REFUSED", "4, 0, NOT_LET_IN", "5, 0, NOT_LET_IN", "3, 0, OTHER"})
    void whatABrokerRefuses_isSaid(int connectCode, int subscribeCode, BrokerState.Why why) {
        try (var broker = new CurtBroker(connectCode, subscribeCode);
                var line = listen(
                        "mqtt://127.0.0.1:" + broker.port(), Optional.empty(), Optional.empty(), Optional.empty())) {
            assertEquals(why, untilAway(line).why());
        }
    }

    @Test
    void encryptedBroker_isTrustedByItsAuthorityOnly() throws Exception {
        var mine = certificate("mine");
        var others = certificate("others");
        try (var broker = Mosquitto.in(
                folder,
                ANYBODY,
                "certfile " + mine.resolveSibling("mine.pem"),
                "keyfile " + mine.resolveSibling("mine.key"))) {
            var address = "mqtts://localhost:" + broker.port();
            try (var line = listen(address, Optional.empty(), Optional.empty(), Optional.of(others))) {
                assertEquals(BrokerState.Why.NOT_TRUSTED, untilAway(line).why());
            }
            try (var line = listen(address, Optional.empty(), Optional.empty(), Optional.empty())) {
                assertEquals(BrokerState.Why.NOT_TRUSTED, untilAway(line).why());
            }
            try (var line = listen(address, Optional.empty(), Optional.empty(), Optional.of(mine))) {
                untilListening(line);
            }
            try (var line = listen(
                    "mqtts://127.0.0.1:" + broker.port(), Optional.empty(), Optional.empty(), Optional.of(mine))) {
                assertEquals(BrokerState.Why.NOT_TRUSTED, untilAway(line).why(), "the certificate is for another name");
            }
        }
    }

    /** A certificate for localhost that vouches for itself, with its key beside it, as PEM. */
    private Path certificate(String name) throws Exception {
        var store = folder.resolve(name + ".p12");
        assertEquals(
                0,
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "keytool")
                                        .toString(),
                                "-genkeypair",
                                "-alias",
                                "broker",
                                "-keyalg",
                                "EC",
                                "-groupname",
                                "secp256r1",
                                "-dname",
                                "CN=localhost",
                                "-ext",
                                "san=dns:localhost",
                                "-ext",
                                "bc:c=ca:true",
                                "-storetype",
                                "PKCS12",
                                "-keystore",
                                store.toString(),
                                "-storepass",
                                "for-this-test")
                        .inheritIO()
                        .start()
                        .waitFor());
        var keys = KeyStore.getInstance(store.toFile(), "for-this-test".toCharArray());
        var key = keys.getKey("broker", "for-this-test".toCharArray());
        Files.writeString(folder.resolve(name + ".key"), pem("PRIVATE KEY", key.getEncoded()));
        return Files.writeString(
                folder.resolve(name + ".pem"),
                pem("CERTIFICATE", keys.getCertificate("broker").getEncoded()));
    }

    private static String pem(String what, byte[] bytes) {
        return "-----BEGIN " + what + "-----\n"
                + Base64.getMimeEncoder(64, "\n".getBytes(UTF_8)).encodeToString(bytes)
                + "\n-----END " + what + "-----\n";
    }

    /** Needs no broker: nobody answers, and the desk goes on asking. */
    @Test
    void brokerThatIsNotThere_isAskedAgainAndAgain() {
        try (var line = listen("mqtt://127.0.0.1:1", Optional.empty(), Optional.empty(), Optional.empty())) {
            assertEquals(BrokerState.Why.NOT_REACHED, untilAway(line).why());
            Mosquitto.until("a third try", () -> line.state() instanceof BrokerState.Away away && away.tries() >= 3);
        }
    }
}
