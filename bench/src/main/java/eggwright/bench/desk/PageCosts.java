package eggwright.bench.desk;

import eggwright.invented.BigBook;
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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What each page of a large book costs the desk, warm: CPU time of the whole process that serves it, compiler and
 * collector too, which a machine that is busy with other work hardly changes; aim: under 20 ms. The peer is a page with
 * nothing on it but the frame: the one that says there is no such page.
 *
 * <p>Words: how many entries, how many seconds of warming for each page.
 */
public final class PageCosts {
    private static final String EMPTY = "/no-such-page";
    private static final int ROUNDS = 11;
    private static final Duration LEAST_CPU = Duration.ofMillis(60);

    private PageCosts() {}

    public static void main(String[] words) throws IOException, InterruptedException {
        int entries = words.length > 0 ? Integer.parseInt(words[0]) : 20_000;
        int warmSeconds = words.length > 1 ? Integer.parseInt(words[1]) : 5;
        var folder = Files.createTempDirectory("eggwright-bench");
        var book = BigBook.of(entries, 1);
        try (var store = DataFolder.at(folder).write(book.getFirst().entry().farm())) {
            store.bringIn(book);
        }
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
            measure(desk, entries, warmSeconds);
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

    private static void measure(Process desk, int entries, int warmSeconds) throws IOException, InterruptedException {
        var said = new BufferedReader(new InputStreamReader(desk.getInputStream(), StandardCharsets.UTF_8));
        var first = said.readLine();
        var address = URI.create(first.substring(first.indexOf("http")));
        var client = HttpClient.newHttpClient();
        long before = cpuNanos(desk);
        get(client, address, "/");
        System.out.printf("the very first page, cold: %.0f ms of CPU%n", (cpuNanos(desk) - before) / 1e6);
        var set = firstSet(get(client, address, "/sets"));
        var pages = List.of(EMPTY, "/", "/sets", set, "/egg-room", "/pens", "/machines", "/book", "/settings");
        Map<String, Integer> calls = new LinkedHashMap<>();
        for (var page : pages) {
            calls.put(page, warm(desk, client, address, page, warmSeconds));
        }
        Map<String, List<Double>> costs = new LinkedHashMap<>();
        for (int round = 0; round < ROUNDS; round++) {
            for (var page : pages) {
                int count = calls.getOrDefault(page, 1);
                long from = cpuNanos(desk);
                for (int i = 0; i < count; i++) {
                    get(client, address, page);
                }
                costs.computeIfAbsent(page, p -> new ArrayList<>()).add((cpuNanos(desk) - from) / 1e6 / count);
            }
        }
        double empty = median(costs.getOrDefault(EMPTY, List.of()));
        System.out.printf("%d entries; CPU of the desk for a page, warm, medians of %d rounds%n", entries, ROUNDS);
        costs.forEach((page, each) -> System.out.printf(
                "%-16s %7.2f ms %7.1f times an empty page%n", page, median(each), median(each) / empty));
    }

    /** Calls it until it is warm; gives how many calls take some time that the system's clock of CPU time can tell. */
    private static int warm(Process desk, HttpClient client, URI address, String page, int seconds)
            throws IOException, InterruptedException {
        long until = System.nanoTime() + Duration.ofSeconds(seconds).toNanos();
        int calls = 0;
        do {
            get(client, address, page);
            calls++;
        } while (System.nanoTime() < until || calls < 40);
        long from = cpuNanos(desk);
        int some = 10;
        for (int i = 0; i < some; i++) {
            get(client, address, page);
        }
        double each = Math.max(0.1e6, (cpuNanos(desk) - from) / (double) some);
        return (int) Math.max(some, LEAST_CPU.toNanos() / each);
    }

    private static String get(HttpClient client, URI address, String page) throws IOException, InterruptedException {
        var response = client.send(
                HttpRequest.newBuilder(address.resolve(page)).build(), HttpResponse.BodyHandlers.ofString());
        if (response.statusCode() != 200 && !page.equals(EMPTY)) {
            throw new IOException(page + " answered " + response.statusCode());
        }
        return response.body();
    }

    private static String firstSet(String page) {
        int at = page.indexOf("href=\"/sets/") + "href=\"".length();
        return page.substring(at, page.indexOf('"', at));
    }

    private static long cpuNanos(Process process) {
        return process.info().totalCpuDuration().orElseThrow().toNanos();
    }

    private static double median(List<Double> values) {
        var sorted = values.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
