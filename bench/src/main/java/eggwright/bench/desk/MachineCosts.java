package eggwright.bench.desk;

import eggwright.book.name.MachineName;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.Readings;
import eggwright.climate.reading.SensorName;
import eggwright.invented.DemoSeason;
import eggwright.store.DataFolder;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * What a machine's page costs the desk, warm, over a store of ten million readings: five machines that read temperature and
 * humidity every minute for a million minutes. CPU time of the whole process that serves it, compiler and collector too,
 * and time on the clock as the asker sees it; aim: under 100 ms for the charts of a season. The peer is a page with nothing on it
 * but the frame.
 *
 * <p>Words: how many seconds of warming for each page.
 */
public final class MachineCosts {
    private static final List<String> MACHINES = List.of("Setter", "Hatcher", "North", "South", "Spare");
    private static final int MINUTES = 1_000_000;
    private static final int ROUNDS = 11;
    private static final int CALLS = 20;

    private MachineCosts() {}

    public static void main(String[] words) throws IOException, InterruptedException {
        int warmSeconds = words.length > 0 ? Integer.parseInt(words[0]) : 8;
        var folder = Files.createTempDirectory("eggwright-bench");
        fill(folder);
        var desk = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "--enable-native-access=ALL-UNNAMED",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "eggwright.cli.Main",
                        "serve",
                        "--port",
                        "0",
                        "--data",
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try {
            measure(desk, warmSeconds);
        } finally {
            desk.destroy();
            desk.waitFor();
            try (var files = Files.walk(folder)) {
                for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private static void fill(Path folder) throws IOException {
        var now = Instant.now().truncatedTo(ChronoUnit.MINUTES);
        var season = DemoSeason.of(now, ZoneId.systemDefault());
        try (var store = DataFolder.at(folder).write(season.farm())) {
            store.bringIn(season.entries());
            long from = System.nanoTime();
            for (var machine : MACHINES) {
                fill(store.readings(), machine, Quantity.AIR_TEMPERATURE, ReadingUnit.FAHRENHEIT, 99.6, 0.02, now);
                fill(store.readings(), machine, Quantity.HUMIDITY, ReadingUnit.PERCENT, 52, 0.12, now);
            }
            System.out.printf(
                    "%,d readings taken in %.1f s; the book's folder is %,d kB%n",
                    2L * MACHINES.size() * MINUTES, (System.nanoTime() - from) / 1e9, size(folder) / 1000);
        }
    }

    private static void fill(
            ReadingStore store,
            String machine,
            Quantity quantity,
            ReadingUnit unit,
            double held,
            double waver,
            Instant now) {
        var random = new SplittableRandom(machine.hashCode());
        var millis = new long[MINUTES];
        var values = new double[MINUTES];
        double away = 0;
        long first = now.minus(Duration.ofMinutes(MINUTES)).toEpochMilli();
        for (int i = 0; i < MINUTES; i++) {
            away = 0.99 * away + waver * random.nextGaussian();
            millis[i] = first + 60_000L * i;
            values[i] = Math.rint(10 * (held + away)) / 10;
        }
        var place = new ReadingPlace.InMachine(new MachineName(machine));
        store.take(new Channel(place, SensorName.ONLY, quantity, unit), Readings.of(millis, values));
    }

    private static long size(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .mapToLong(f -> f.toFile().length())
                    .sum();
        }
    }

    private static void measure(Process desk, int warmSeconds) throws IOException, InterruptedException {
        var said = new BufferedReader(new InputStreamReader(desk.getInputStream(), StandardCharsets.UTF_8));
        var first = said.readLine();
        var address = URI.create(first.substring(first.indexOf("http")));
        var client = HttpClient.newHttpClient();
        var pages = new ArrayList<>(List.of(
                "/no-such-page",
                "/machines/Setter",
                "/machines/Setter?span=week",
                "/machines/Setter?span=month",
                "/machines/Setter?span=season",
                "/machines/Setter/sensors",
                "/machines/Setter/sensors?past=year"));
        MACHINES.stream().skip(1).map(m -> "/machines/" + m + "?span=season").forEach(pages::add);
        for (var page : pages) {
            long until = System.nanoTime() + Duration.ofSeconds(warmSeconds).toNanos();
            while (System.nanoTime() < until) {
                get(client, address, page);
            }
        }
        for (var page : pages) {
            var cpu = new double[ROUNDS];
            var clock = new double[ROUNDS];
            for (int round = 0; round < ROUNDS; round++) {
                long cpuFrom = cpuNanos(desk);
                long from = System.nanoTime();
                for (int i = 0; i < CALLS; i++) {
                    get(client, address, page);
                }
                clock[round] = (System.nanoTime() - from) / 1e6 / CALLS;
                cpu[round] = (cpuNanos(desk) - cpuFrom) / 1e6 / CALLS;
            }
            Arrays.sort(cpu);
            Arrays.sort(clock);
            System.out.printf(
                    "%-32s %7.2f ms of CPU %7.2f ms on the clock%n", page, cpu[ROUNDS / 2], clock[ROUNDS / 2]);
        }
    }

    private static void get(HttpClient client, URI address, String page) throws IOException, InterruptedException {
        var response = client.send(
                HttpRequest.newBuilder(address.resolve(page)).build(), HttpResponse.BodyHandlers.ofString());
        if (response.statusCode() != 200 && !page.equals("/no-such-page")) {
            throw new IOException(page + " answered " + response.statusCode());
        }
    }

    private static long cpuNanos(Process process) {
        return process.info().totalCpuDuration().orElseThrow().toNanos();
    }
}
