package eggwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Opens the demo, turns its pages as a browser would, and leaves with the desk still open. */
final class DeskRehearsal {
    private static final List<String> PAGES = List.of(
            "/",
            "/sets",
            "/egg-room",
            "/pens",
            "/machines",
            "/machines/Setter",
            "/book",
            "/settings",
            "/notes",
            "/notes/eggs-gathered");

    private DeskRehearsal() {}

    static void run() {
        try (var said = new PipedInputStream()) {
            var out = new PrintStream(new PipedOutputStream(said), false, StandardCharsets.UTF_8);
            var nobody = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
            var desk = Thread.ofPlatform().daemon().unstarted(() -> Main.run(out, nobody, "demo", "--port", "0"));
            desk.start();
            var lines = new BufferedReader(new InputStreamReader(said, StandardCharsets.UTF_8));
            var first = lines.readLine();
            var address = URI.create(first.substring(first.indexOf("http")));
            for (var page : PAGES) {
                get(address.getPort(), page);
            }
            System.exit(0);
        } catch (IOException closed) {
            // Nothing was rehearsed; the desk starts as well without.
        }
    }

    private static void get(int port, String page) throws IOException {
        try (var socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.getOutputStream()
                    .write(("GET " + page + " HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            socket.getInputStream().readAllBytes();
        }
    }
}
