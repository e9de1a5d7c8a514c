package eggwright.desk;

import eggwright.book.name.DeviceName;
import eggwright.book.name.MachineName;
import eggwright.book.store.Offered;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.SensorName;
import eggwright.desk.farm.FarmDesk;
import eggwright.desk.joining.Devices;
import eggwright.desk.joining.DevicesInMemory;
import eggwright.desk.machine.MemoryReadings;
import eggwright.desk.network.DeskName;
import eggwright.desk.network.FarmAuthority;
import eggwright.desk.network.Lan;
import eggwright.desk.network.TrustingSockets;
import eggwright.desk.who.Role;
import eggwright.intake.Incoming;
import eggwright.intake.file.ColumnsInMemory;
import eggwright.intake.file.LoggerFiles;
import eggwright.intake.message.Intake;
import eggwright.intake.sensor.Sensors;
import eggwright.intake.sensor.SensorsInMemory;
import eggwright.invented.DemoSeason;
import eggwright.testkit.contracts.MemoryBuyerStore;
import eggwright.testkit.contracts.MemoryEntryStore;
import eggwright.wire.EntryCodec;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.NullMarked;

/** The invented farm's desk, open to a network that is this machine's own; spoken to as a phone does that trusts it. */
@NullMarked
public final class NetworkDesk implements AutoCloseable {
    public static final Instant NOON = Instant.parse("2027-05-12T17:00:00Z");
    public static final String NAME = "larkfield.local";

    /** A clock that is set forward by hand. */
    public static final class SetClock implements InstantSource {
        private volatile Instant now = NOON;

        @Override
        public Instant instant() {
            return now;
        }

        public void forward(Duration by) {
            now = now.plus(by);
        }
    }

    public final SetClock clock = new SetClock();
    public final Devices devices;
    public final MemoryEntryStore store;
    public final Lan lan;
    public final Desk desk;
    public final MemoryReadings readings = new MemoryReadings();
    public final Sensors sensors;
    private final TrustingSockets sockets;

    public NetworkDesk(Path folder) {
        var random = new SecureRandom();
        var zone = ZoneId.of("America/Chicago");
        var season = DemoSeason.of(NOON, zone);
        store = new MemoryEntryStore(season.farm());
        for (var kept : season.entries()) {
            store.append(
                    new Offered(kept.entry(), EntryCodec.write(kept.entry()), kept.clockOffset()), kept.received());
        }
        devices = new Devices(new DevicesInMemory(), clock, random);
        var name = new DeskName(NAME);
        // Certificates are judged by the clock of whoever connects, which a test cannot set.
        lan = new Lan(name, freePort(), FarmAuthority.in(folder, name, InstantSource.system(), random), devices);
        sockets = TrustingSockets.of(lan.authority(), NAME);
        sensors = new Sensors(new SensorsInMemory(), clock, random);
        var incoming = new Incoming(
                sensors, new Intake(sensors, readings, clock), new LoggerFiles(readings, new ColumnsInMemory()));
        desk = Desk.open(FarmDesk.setup(
                store,
                new MemoryBuyerStore(),
                readings,
                EntryCodec::write,
                EntryCodec::version,
                clock,
                random,
                zone,
                0,
                new FarmDesk.Company(devices, new Reach.Network(lan), picture -> {}, Optional.of(incoming))));
    }

    private static int freePort() {
        try (var socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        } catch (IOException none) {
            throw new UncheckedIOException(none);
        }
    }

    /** The token of a sensor in the setter that has just been added. */
    public String sensor(String name, Quantity quantity, ReadingUnit unit) {
        var place = new ReadingPlace.InMachine(new MachineName("Setter"));
        var added = sensors.add(new Channel(place, new SensorName(name), quantity, unit));
        return ((Sensors.Added.In) added).token();
    }

    /** The cookie of a device that has just joined as such. */
    public String joined(Role role, String name) {
        var code = ((Devices.Invitation.Code) devices.invite(role)).code();
        return switch (devices.join(code, new DeviceName(name), "test " + name)) {
            case Devices.Entrance.In(var device, var token) -> "__Host-device=" + token;
            case Devices.Entrance.NotRight no -> throw new AssertionError(no);
            case Devices.Entrance.TooOften no -> throw new AssertionError(no);
        };
    }

    /** Where pages of the desk come from, for a phone. */
    public String origin() {
        return "https://" + NAME + ":" + lan.port();
    }

    /** What a phone gets over https, under the desk's name. */
    public PlainHttp.Answer phone(String method, String path, String cookie, Map<String, String> headers, String body)
            throws IOException {
        var all = new HashMap<String, String>();
        all.put("Host", NAME + ":" + lan.port());
        if (!cookie.isEmpty()) {
            all.put("Cookie", cookie);
        }
        if (method.equals("POST")) {
            all.put("Origin", origin());
            all.put("Sec-Fetch-Site", "same-origin");
            all.putAll(asOfScript(path));
        }
        all.putAll(headers);
        return PlainHttp.ask(sockets, lan.port(), method, path, all, body);
    }

    /** What the machine itself gets, over its loopback. */
    public PlainHttp.Answer here(String method, String path, String body) throws IOException {
        var port = desk.address().getPort();
        var all = new HashMap<>(Map.of("Origin", "http://127.0.0.1:" + port));
        all.putAll(asOfScript(path));
        return PlainHttp.ask(port, method, path, all, body);
    }

    /** Scripts send JSON, and nothing else is taken where they send it. */
    private static Map<String, String> asOfScript(String path) {
        return path.startsWith(Routes.API) ? Map.of("Content-Type", "application/json") : Map.of();
    }

    /** What comes in the open. */
    public PlainHttp.Answer open(String method, String path, Map<String, String> headers) throws IOException {
        return PlainHttp.ask(lan.port(), method, path, headers, "");
    }

    @Override
    public void close() {
        desk.close();
    }
}
