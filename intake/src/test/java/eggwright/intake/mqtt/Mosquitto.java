package eggwright.intake.mqtt;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Assumptions;

/**
 * A real broker on this machine alone: Eclipse Mosquitto, as Debian packs it. Where there is none the tests are passed over
 * with a word that says how to get one; with {@code -Deggwright.broker=required} they fail instead.
 */
final class Mosquitto implements AutoCloseable {
    private static final List<String> USUAL =
            List.of("/usr/sbin/mosquitto", "/usr/local/sbin/mosquitto", "/opt/homebrew/sbin/mosquitto");
    private static final String MISSING = "No Mosquitto was found, so nothing was tried against a real broker."
            + " On Debian: apt-get install mosquitto";

    private final Path configuration;
    private final int port;
    private Process process;

    private Mosquitto(Path configuration, int port) {
        this.configuration = configuration;
        this.port = port;
        this.process = start();
    }

    /** @param more lines of its configuration, as whom it lets in */
    static Mosquitto in(Path folder, String... more) {
        try {
            var port = freePort();
            // Started as root it would become another user, who may not read what lies here.
            var lines = "user " + System.getProperty("user.name") + "\nlistener " + port + " 127.0.0.1\n"
                    + String.join("\n", more) + "\n";
            return new Mosquitto(Files.writeString(folder.resolve("mosquitto-" + port + ".conf"), lines), port);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static String program() {
        Optional<String> found =
                USUAL.stream().filter(p -> Files.isExecutable(Path.of(p))).findFirst();
        if ("required".equals(System.getProperty("eggwright.broker"))) {
            return found.orElseThrow(() -> new AssertionError(MISSING));
        }
        Assumptions.assumeTrue(found.isPresent(), MISSING);
        return found.orElseThrow();
    }

    private static int freePort() throws IOException {
        try (var socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    int port() {
        return port;
    }

    private Process start() {
        try {
            var started = new ProcessBuilder(program(), "-c", configuration.toString())
                    .redirectErrorStream(true)
                    .redirectOutput(configuration
                            .resolveSibling("mosquitto-" + port + ".log")
                            .toFile())
                    .start();
            until("Mosquitto answers", this::answers);
            return started;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private boolean answers() {
        try (var socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            return socket.isConnected();
        } catch (IOException notYet) {
            return false;
        }
    }

    /** As a power cut does it. */
    void kill() {
        process.destroyForcibly();
        try {
            process.waitFor(10, TimeUnit.SECONDS);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    void startAgain() {
        process = start();
    }

    @Override
    public void close() {
        kill();
    }

    /** Waits for what comes by itself, and fails where it does not come. */
    static void until(String what, BooleanSupplier holds) {
        long end = System.nanoTime() + Duration.ofSeconds(20).toNanos();
        while (!holds.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("It did not come to this within 20 s: " + what);
            }
            try {
                Thread.sleep(20);
            } catch (InterruptedException hurried) {
                Thread.currentThread().interrupt();
                throw new AssertionError(hurried);
            }
        }
    }
}
