package eggwright.desk.intake;

import static java.nio.charset.StandardCharsets.UTF_8;

import eggwright.book.name.MachineName;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.SensorName;
import eggwright.desk.Desk;
import eggwright.desk.farm.DemoDesk;
import eggwright.desk.machine.MemoryReadings;
import eggwright.intake.Incoming;
import eggwright.intake.file.ColumnsInMemory;
import eggwright.intake.file.FarmPlaces;
import eggwright.intake.file.LoggerFiles;
import eggwright.intake.folder.WatchedFolder;
import eggwright.intake.message.Delivery;
import eggwright.intake.message.Intake;
import eggwright.intake.mqtt.Broker;
import eggwright.intake.mqtt.BrokerState;
import eggwright.intake.sensor.Sensors;
import eggwright.intake.sensor.SensorsInMemory;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import java.util.SplittableRandom;

/** The invented farm with sensors that send, a broker that is away and a watched folder in which some files wait. */
final class IntakeDesk implements AutoCloseable {
    private static final String BOUNDARY = "----fallow-end";

    /** A clock that is set by hand. */
    static final class SetClock implements InstantSource {
        volatile Instant now = DemoDesk.NOON;

        @Override
        public Instant instant() {
            return now;
        }
    }

    final SetClock clock = new SetClock();
    final MemoryReadings readings = DemoDesk.readings();
    final Sensors sensors = new Sensors(new SensorsInMemory(), clock, new SplittableRandom(5));
    final Intake intake = new Intake(sensors, readings, clock);
    final LoggerFiles files = new LoggerFiles(readings, new ColumnsInMemory());
    final WatchedFolder folder;
    final Desk desk;
    private final HttpClient browser = HttpClient.newHttpClient();

    IntakeDesk(Path watched) {
        folder = new WatchedFolder(
                watched, files, new ColumnsInMemory(), () -> FarmPlaces.of(DemoDesk.picture()), clock);
        var broker = Broker.of(
                "mqtt://broker.fallow-end.example",
                Broker.USUAL_TOPIC,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        var away = new BrokerState.Away(
                BrokerState.Why.NOT_REACHED,
                "Connection refused",
                DemoDesk.NOON.minusSeconds(3600),
                61,
                DemoDesk.NOON.plusSeconds(60));
        desk = DemoDesk.open(
                readings,
                Optional.of(new Incoming(
                        sensors,
                        intake,
                        files,
                        Optional.of(() -> new Incoming.Heard(broker, away)),
                        Optional.of(folder::looked))));
    }

    /** Three sensors: one told well, one in a wrong unit, one whose token was revoked and that still sends. */
    void sensorsSend() {
        var shelf = add("Shelf 2", Quantity.AIR_TEMPERATURE, ReadingUnit.FAHRENHEIT);
        tell(shelf, "99.5");
        tell(shelf, "{\"value\":99.6,\"at\":\"2027-05-12T11:59:00-05:00\"}");
        tell(shelf, "37.5 C");
        tell(add("Lid", Quantity.AIR_TEMPERATURE, ReadingUnit.CELSIUS), "99.5");
        add("Door", Quantity.HUMIDITY, ReadingUnit.PERCENT);
        var old = add("Old box", Quantity.WET_BULB, ReadingUnit.FAHRENHEIT);
        sensors.all().stream().filter(s -> s.name().equals("Old box")).forEach(s -> sensors.revoke(s.id()));
        tell(old, "86");
        tell("nobody’s", "12");
    }

    /** Files that wait, and one that still grows. */
    void filesLie(Path watched) throws IOException {
        Files.createDirectories(watched.resolve("Setter"));
        Files.createDirectories(watched.resolve("Seter"));
        Files.writeString(watched.resolve("Setter/may.csv"), "Time,Temp,RH\n2027-05-12 06:00,99.5,55\n");
        Files.writeString(
                watched.resolve("Setter/spoilt.csv"), "Time,Temp,RH\n2027-05-12 06:00,99.5,55\nnoon,99.5,55\n");
        Files.writeString(watched.resolve("Seter/may.csv"), "Time,Temp,RH\n2027-05-12 06:00,99.5,55\n");
        Files.writeString(watched.resolve("may.csv"), "Time,Temp,RH\n2027-05-12 06:00,99.5,55\n");
        folder.look();
        clock.now = clock.now.plus(WatchedFolder.STILL);
        Files.writeString(watched.resolve("Setter/new.csv"), "Time,Temp,RH\n2027-05-12 06:00,99.5,55\n");
        folder.look();
    }

    String add(String name, Quantity quantity, ReadingUnit unit) {
        var place = new ReadingPlace.InMachine(new MachineName("Setter"));
        return ((Sensors.Added.In) sensors.add(new Channel(place, new SensorName(name), quantity, unit))).token();
    }

    void tell(String token, String message) {
        intake.take(token, message.getBytes(UTF_8), Delivery.LIVE);
    }

    URI at(String path) {
        return desk.address().resolve(path);
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return browser.send(HttpRequest.newBuilder(at(path)).build(), BodyHandlers.ofString());
    }

    HttpResponse<String> post(String path, String form) throws IOException, InterruptedException {
        return post(path, "application/x-www-form-urlencoded", BodyPublishers.ofString(form));
    }

    HttpResponse<String> post(String path, String type, BodyPublisher body) throws IOException, InterruptedException {
        var own = desk.address();
        return browser.send(
                HttpRequest.newBuilder(at(path))
                        .header("Origin", own.getScheme() + "://" + own.getAuthority())
                        .header("Content-Type", type)
                        .POST(body)
                        .build(),
                BodyHandlers.ofString());
    }

    /** As a browser sends a form with a file in it (RFC 7578). */
    HttpResponse<String> bring(String name, byte[] file, String place) throws IOException, InterruptedException {
        var before = "--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"place\"\r\n\r\n" + place + "\r\n--"
                + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + name
                + "\"\r\nContent-Type: text/csv\r\n\r\n";
        var after = "\r\n--" + BOUNDARY + "--\r\n";
        var all = new java.io.ByteArrayOutputStream();
        all.writeBytes(before.getBytes(UTF_8));
        all.writeBytes(file);
        all.writeBytes(after.getBytes(UTF_8));
        return post(
                "/readings/files",
                "multipart/form-data; boundary=" + BOUNDARY,
                BodyPublishers.ofByteArray(all.toByteArray()));
    }

    @Override
    public void close() {
        browser.close();
        desk.close();
    }
}
