package eggwright.desk.network;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.desk.joining.Devices;
import eggwright.desk.joining.DevicesInMemory;
import java.io.ByteArrayOutputStream;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketTimeoutException;
import java.net.StandardSocketOptions;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Asks as a phone does (RFC 6762, section 5.1, one-shot query), in bytes of our own: nothing of the library that answers. */
final class AnnouncementTest {
    private static final int WAIT_MILLIS = 1000;
    private static final int TRIES = 10;

    @TempDir
    private Path folder;

    @Test
    void phone_isToldTheAddress_ofTheDesksName() throws Exception {
        var addresses = Announcement.reachable();
        Assumptions.assumeFalse(addresses.isEmpty(), "This machine is on no network that carries multicast");
        var address = addresses.getFirst();
        var host = "larkfield-" + Long.toHexString(new SecureRandom().nextLong());
        var name = new DeskName(host + ".local");
        var clock = InstantSource.system();
        var devices = new Devices(new DevicesInMemory(), clock, new SplittableRandom(1));
        var lan = new Lan(name, 4748, FarmAuthority.in(folder, name, clock, new SecureRandom()), devices);

        try (var announcement = Announcement.on(List.of(address), lan)) {
            assertEquals(List.of(), announcement.trouble());
            assertArrayEquals(address.getAddress(), ask(address, host));
        }
    }

    @Test
    void nameOfAnotherEnding_isLeftToTheRouter() {
        var name = new DeskName("desk.larkfield.example");
        var clock = InstantSource.system();
        var devices = new Devices(new DevicesInMemory(), clock, new SplittableRandom(1));
        var lan = new Lan(name, 4748, FarmAuthority.in(folder, name, clock, new SecureRandom()), devices);

        try (var announcement = Announcement.of(lan)) {
            assertEquals(List.of(), announcement.addresses());
        }
    }

    /** The address in the last four bytes of the first answer that names the host. */
    private static byte[] ask(InetAddress from, String host) throws Exception {
        var question = new ByteArrayOutputStream();
        question.writeBytes(new byte[] {7, 7, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, (byte) host.length()});
        question.writeBytes(host.getBytes(US_ASCII));
        question.writeBytes(new byte[] {5, 'l', 'o', 'c', 'a', 'l', 0, 0, 1, 0, 1});
        try (var socket = new DatagramSocket(0, from)) {
            socket.setOption(StandardSocketOptions.IP_MULTICAST_IF, NetworkInterface.getByInetAddress(from));
            socket.setSoTimeout(WAIT_MILLIS);
            var bytes = question.toByteArray();
            for (int i = 0; i < TRIES; i++) {
                socket.send(new DatagramPacket(bytes, bytes.length, InetAddress.getByName("224.0.0.251"), 5353));
                var answer = new DatagramPacket(new byte[1500], 1500);
                try {
                    socket.receive(answer);
                    return Arrays.copyOfRange(answer.getData(), answer.getLength() - 4, answer.getLength());
                } catch (SocketTimeoutException notYet) {
                    // The name is first asked for on the network, that no other has it; that takes a moment.
                }
            }
        }
        throw new AssertionError("Nobody answered for " + host + ".local");
    }
}
