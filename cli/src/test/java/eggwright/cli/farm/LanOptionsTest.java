package eggwright.cli.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.name.DeviceName;
import eggwright.book.name.FarmId;
import eggwright.cli.Main;
import eggwright.desk.joining.Devices;
import eggwright.desk.who.Role;
import eggwright.desk.who.Visitor;
import eggwright.store.DataFolder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What serve --lan is told, up to where it would open its ports: each run here finds the first one taken. */
class LanOptionsTest {
    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int serve(String... more) throws IOException {
        out.reset();
        err.reset();
        try (var taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            var words = new String[more.length + 5];
            System.arraycopy(
                    new String[] {"serve", "--data", data(), "--port", Integer.toString(taken.getLocalPort())},
                    0,
                    words,
                    0,
                    5);
            System.arraycopy(more, 0, words, 5, more.length);
            return Main.run(
                    new PrintStream(out, true, StandardCharsets.UTF_8),
                    new PrintStream(err, true, StandardCharsets.UTF_8),
                    words);
        }
    }

    private String data() {
        return folder.resolve("farm").toString();
    }

    private String said() {
        return err.toString(StandardCharsets.UTF_8);
    }

    private String kept(String setting) {
        try (var store = DataFolder.at(Path.of(data())).read()) {
            return store.settings().find(setting).orElse("");
        }
    }

    @Test
    void nameAndPort_areChosenOnce_andKept() throws IOException {
        assertEquals(2, serve("--lan", "--name", "larkfield.local", "--https-port", "4750"));
        assertTrue(said().contains("is taken") || said().contains("of this machine is"), said());
        assertEquals("larkfield.local", kept("desk.name"));
        assertEquals("4750", kept("desk.https-port"));
        var authority = Files.readString(folder.resolve("farm/authority/authority.pem"));

        assertEquals(2, serve("--lan"));
        assertFalse(said().contains("An authority was made"), said());
        assertEquals("larkfield.local", kept("desk.name"));
        assertEquals(authority, Files.readString(folder.resolve("farm/authority/authority.pem")));
    }

    @Test
    void anotherNameOrPort_isRefused_unlessItIsMeant() throws IOException {
        serve("--lan", "--name", "larkfield.local");
        assertEquals(2, serve("--lan", "--name", "other.local"));
        assertTrue(said().contains("The desk is known to phones by --name larkfield.local"), said());
        assertEquals(2, serve("--lan", "--https-port", "4999"));
        assertTrue(said().contains("The desk is known to phones by --https-port 4748"), said());
        assertEquals("larkfield.local", kept("desk.name"));

        serve("--lan", "--name", "other.local", "--rename");
        assertEquals("other.local", kept("desk.name"));
    }

    @Test
    void name_isMadeOfTheFarms_whereNoneWasGiven() throws IOException {
        serve("--lan");
        assertEquals("eggwright.local", kept("desk.name"));
    }

    @Test
    void bareAddress_isRefused_andNothingIsMade() throws IOException {
        assertEquals(2, serve("--lan", "--name", "192.168.1.4"));
        assertTrue(said().contains("no bare address"), said());
        assertEquals("", kept("desk.name"));
        assertFalse(Files.exists(folder.resolve("farm/authority")));
    }

    @Test
    void name_withoutTheNetwork_isRefused() throws IOException {
        assertEquals(2, serve("--name", "larkfield.local"));
        assertTrue(said().contains("--name goes with --lan"), said());
    }

    @Test
    void devices_areStillInOrOut_whenTheBookIsOpenedAgain() {
        var now = new AtomicReference<>(Instant.parse("2027-05-12T17:00:00Z"));
        String stays;
        String goes;
        try (var store = DataFolder.at(Path.of(data())).write(new FarmId("larkfield"))) {
            var devices = new Devices(new StoredDevices(store.devices()), now::get, new SecureRandom());
            stays = join(devices, "Wren’s phone");
            goes = join(devices, "Lost phone");
            devices.all().stream()
                    .filter(device -> device.name().text().equals("Lost phone"))
                    .forEach(device -> devices.letGo(device.id()));
            devices.setPassphrase("barn lantern oat eleven");
        }
        now.set(now.get().plus(Duration.ofDays(30)));
        try (var store = DataFolder.at(Path.of(data())).write()) {
            var devices = new Devices(new StoredDevices(store.devices()), now::get, new SecureRandom());
            assertEquals(Role.HAND, devices.known(stays).visitor().role().orElseThrow());
            assertEquals(new Visitor.Nobody(), devices.known(goes).visitor());
            assertTrue(devices.hasPassphrase());
        }
    }

    private static String join(Devices devices, String name) {
        var code = ((Devices.Invitation.Code) devices.invite(Role.HAND)).code();
        return ((Devices.Entrance.In) devices.join(code, new DeviceName(name), "192.0.2.7")).token();
    }
}
