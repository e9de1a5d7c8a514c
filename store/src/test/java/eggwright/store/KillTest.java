package eggwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program that is killed at any moment loses nothing that it acknowledged. A pulled plug is another matter; not tried here. */
class KillTest {
    private static final long SEED = 413;
    private static final int KILLS = 5;
    private static final int MOST_BEFORE_A_KILL = 120;
    private static final int NUMBERS_APART = 100_000;

    @TempDir
    private Path folder;

    @Test
    void everyAcknowledgedEntry_isThereOnce_afterEachKill() throws Exception {
        var random = new SplittableRandom(SEED);
        var acknowledged = new ArrayList<String>();
        for (int kill = 0; kill < KILLS; kill++) {
            acknowledged.addAll(appendAndKill(kill * NUMBERS_APART, random));
            try (var store = DataFolder.at(folder).read()) {
                var there =
                        store.all().stream().map(k -> k.entry().id().toString()).toList();
                assertEquals(there.size(), new HashSet<>(there).size(), "seed " + SEED);
                assertTrue(there.containsAll(acknowledged), "seed " + SEED + ", kill " + kill);
                assertTrue(Backups.verify(store).isWhole());
            }
        }
        assertTrue(acknowledged.size() >= KILLS);
    }

    private List<String> appendAndKill(int first, SplittableRandom random) throws IOException, InterruptedException {
        var child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "--enable-native-access=ALL-UNNAMED",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        AppendsUntilKilled.class.getName(),
                        folder.toString(),
                        Integer.toString(first))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        var acknowledged = new ArrayList<String>();
        try (var said = child.inputReader(StandardCharsets.UTF_8)) {
            int wanted = random.nextInt(1, MOST_BEFORE_A_KILL);
            while (acknowledged.size() < wanted) {
                var line = said.readLine();
                assertTrue(line != null, "The program ended by itself");
                acknowledged.add(line);
            }
            TimeUnit.MICROSECONDS.sleep(random.nextInt(3000));
            // By its handle: ending the Process itself would close the stream that holds its last words.
            assertTrue(child.toHandle().destroyForcibly());
            // What it said before it died counts too; a line cut short does not.
            said.lines().filter(line -> line.length() == 36).forEach(acknowledged::add);
            assertTrue(child.waitFor(1, TimeUnit.MINUTES));
            return acknowledged;
        } finally {
            child.destroyForcibly();
        }
    }
}
