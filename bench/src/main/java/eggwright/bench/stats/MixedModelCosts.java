package eggwright.bench.stats;

import com.sun.management.OperatingSystemMXBean;
import eggwright.stats.mixed.BinomialCounts;
import eggwright.stats.mixed.Grouping;
import eggwright.stats.mixed.MixedModel;
import eggwright.stats.mixed.MixedOutcome;
import eggwright.stats.mixed.Term;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.zip.GZIPInputStream;

/**
 * What fitting the mixed model costs, warm: CPU time of the whole process, compiler and collector too, reading left out.
 * Fertility by storage days and machine, scatter by pen, week and tray.
 *
 * <p>Words: either three numbers (pens, weeks, trays of each), for a season made up with a seed; or a CSV file, packed or
 * not, with the columns pen, week, storage_days, machine, eggs, fertile. {@code bench/mixed-model.R} fits the same in R.
 */
public final class MixedModelCosts {
    private static final int ROUNDS = 9;
    /** Rows that are fitted, over and over, in one round: the clock of a process ticks every 10 ms only. */
    private static final int ROWS_OF_A_ROUND = 80_000;

    private MixedModelCosts() {}

    public static void main(String[] words) throws IOException {
        var model = words.length == 1
                ? read(Path.of(words[0]))
                : invented(Integer.parseInt(words[0]), Integer.parseInt(words[1]), Integer.parseInt(words[2]));
        var machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        double[] cpu = new double[ROUNDS];
        double[] clock = new double[ROUNDS];
        MixedOutcome outcome = model.fit();
        int fits = Math.max(1, ROWS_OF_A_ROUND / model.counts().rows());
        for (int round = -ROUNDS; round < ROUNDS; round++) {
            long cpuFrom = machine.getProcessCpuTime();
            long clockFrom = System.nanoTime();
            for (int fit = 0; fit < fits; fit++) {
                outcome = model.fit();
            }
            if (round >= 0) {
                cpu[round] = (machine.getProcessCpuTime() - cpuFrom) / 1e6 / fits;
                clock[round] = (System.nanoTime() - clockFrom) / 1e6 / fits;
            }
        }
        Arrays.sort(cpu);
        Arrays.sort(clock);
        System.gc();
        var memory = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage();
        System.out.printf(
                "%,d rows: CPU %.1f ms (least %.1f), clock %.1f ms, median of %d; heap committed %d MB%n",
                model.counts().rows(), cpu[ROUNDS / 2], cpu[0], clock[ROUNDS / 2], ROUNDS, memory.getCommitted() >> 20);
        if (outcome instanceof MixedOutcome.Fitted fit) {
            fit.fixed()
                    .forEach(each -> System.out.printf(
                            "  %-14s %.8f  %.8f%n", each.term(), each.estimate(), each.standardError()));
            fit.random()
                    .forEach(each -> System.out.printf(
                            "  sd %-11s %.8f%n", each.grouping().name(), each.standardDeviation()));
            System.out.printf(
                    "  log-likelihood %.6f, %d steps, converged %s%n",
                    fit.logLikelihood(), fit.iterations(), fit.converged());
        } else {
            System.out.println(outcome);
        }
    }

    private static MixedModel read(Path file) throws IOException {
        try (var raw = Files.newInputStream(file);
                var text = new BufferedReader(new InputStreamReader(
                        file.toString().endsWith(".gz") ? new GZIPInputStream(raw) : raw, StandardCharsets.UTF_8))) {
            var columns = List.of(text.readLine().split(",", -1));
            var rows = text.lines().map(line -> line.split(",", -1)).toList();
            IntFunction<String[]> column =
                    at -> rows.stream().map(row -> row[at]).toArray(String[]::new);
            return model(
                    column.apply(columns.indexOf("pen")),
                    column.apply(columns.indexOf("week")),
                    numbers(column.apply(columns.indexOf("storage_days"))),
                    column.apply(columns.indexOf("machine")),
                    numbers(column.apply(columns.indexOf("eggs"))),
                    numbers(column.apply(columns.indexOf("fertile"))));
        }
    }

    private static int[] numbers(String[] texts) {
        return Arrays.stream(texts).mapToInt(Integer::parseInt).toArray();
    }

    private static MixedModel invented(int pens, int weeks, int trays) {
        var random = new Random(7);
        int rows = pens * weeks * trays;
        double[] ofPen =
                random.doubles(pens).map(u -> random.nextGaussian() * 0.5).toArray();
        double[] ofWeek =
                random.doubles(weeks).map(u -> random.nextGaussian() * 0.2).toArray();
        var pen = new String[rows];
        var week = new String[rows];
        var machine = new String[rows];
        int[] storage = new int[rows];
        int[] eggs = new int[rows];
        int[] fertile = new int[rows];
        for (int row = 0; row < rows; row++) {
            int p = row / (weeks * trays);
            int w = row / trays % weeks;
            pen[row] = "P" + p;
            week[row] = "W" + w;
            machine[row] = random.nextBoolean() ? "A" : "B";
            storage[row] = random.nextInt(15);
            eggs[row] = 60 + random.nextInt(61);
            double eta = 1.9
                    - 0.06 * storage[row]
                    + (machine[row].equals("B") ? 0.15 : 0)
                    + ofPen[p]
                    + ofWeek[w]
                    + 0.3 * random.nextGaussian();
            for (int egg = 0; egg < eggs[row]; egg++) {
                fertile[row] += random.nextDouble() < 1 / (1 + Math.exp(-eta)) ? 1 : 0;
            }
        }
        return model(pen, week, storage, machine, eggs, fertile);
    }

    private static MixedModel model(
            String[] pen, String[] week, int[] storage, String[] machine, int[] eggs, int[] fertile) {
        var machines = Arrays.stream(machine).distinct().sorted().toList();
        return new MixedModel(
                new BinomialCounts(fertile, eggs),
                List.of(
                        new Term.Numbers(
                                "storage_days",
                                Arrays.stream(storage).asDoubleStream().toArray()),
                        new Term.Category(
                                "machine",
                                Arrays.stream(machine)
                                        .mapToInt(machines::indexOf)
                                        .toArray(),
                                machines)),
                List.of(grouping("pen", pen), grouping("week", week), grouping("row", rowsOf(pen.length))));
    }

    private static String[] rowsOf(int rows) {
        return IntStream.range(0, rows).mapToObj(Integer::toString).toArray(String[]::new);
    }

    private static Grouping grouping(String name, String[] levels) {
        var places = new LinkedHashMap<String, Integer>();
        int[] levelOfRow = Arrays.stream(levels)
                .mapToInt(level -> places.computeIfAbsent(level, each -> places.size()))
                .toArray();
        return new Grouping(name, levelOfRow, List.copyOf(places.keySet()));
    }
}
