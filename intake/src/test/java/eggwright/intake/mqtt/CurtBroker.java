package eggwright.intake.mqtt;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;

/**
 * Says two packets of MQTT 3.1.1 to whoever comes, and then nothing: what a real broker can hardly be brought to say.
 * Layouts: CONNACK in section 3.2, SUBACK in section 3.9 of the standard.
 */
final class CurtBroker implements AutoCloseable {
    private static final int SUBSCRIBE = 8;

    private final ServerSocket socket;
    private final int connectCode;
    private final int subscribeCode;

    CurtBroker(int connectCode, int subscribeCode) {
        this.connectCode = connectCode;
        this.subscribeCode = subscribeCode;
        try {
            socket = new ServerSocket(0, 5, InetAddress.getLoopbackAddress());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        Thread.ofVirtual().start(this::answer);
    }

    int port() {
        return socket.getLocalPort();
    }

    private void answer() {
        while (!socket.isClosed()) {
            try (var line = socket.accept();
                    var in = new DataInputStream(line.getInputStream())) {
                packet(in);
                line.getOutputStream().write(new byte[] {0x20, 2, 0, (byte) connectCode});
                var subscribe = packet(in);
                if ((subscribe[0] & 0xFF) >>> 4 == SUBSCRIBE) {
                    line.getOutputStream()
                            .write(new byte[] {(byte) 0x90, 3, subscribe[1], subscribe[2], (byte) subscribeCode});
                }
                in.readAllBytes();
            } catch (IOException gone) {
                // The next one.
            }
        }
    }

    /** The first byte, and what stands behind the length, which is below 128 here. */
    private static byte[] packet(DataInputStream in) throws IOException {
        var first = in.readByte();
        var packet = new byte[1 + in.readUnsignedByte()];
        packet[0] = first;
        in.readFully(packet, 1, packet.length - 1);
        return packet;
    }

    @Override
    public void close() {
        try {
            socket.close();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
