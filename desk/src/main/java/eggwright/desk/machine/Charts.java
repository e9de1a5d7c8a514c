package eggwright.desk.machine;

import eggwright.book.picture.MachinePicture;
import eggwright.climate.air.Surroundings;
import eggwright.climate.reading.Quantity;
import eggwright.climate.rollup.Rollup;
import eggwright.desk.picture.ClimateChart;
import eggwright.desk.picture.ClimateChart.Guide;
import eggwright.desk.picture.ClimateChart.Line;
import eggwright.desk.picture.ClimateChart.Mark;
import eggwright.desk.picture.ClimateChart.Silence;
import eggwright.desk.picture.ClimateChart.Stretch;
import eggwright.desk.picture.Numbers;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.egg.air.MoistAir;
import eggwright.units.OutOfRange;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/** Draws what was read: temperature, humidity, and the wet bulb where somebody reads one. */
final class Charts {
    private final Window window;
    private final ZoneId zone;
    private final Degrees degrees;
    private final Words words;
    private final Days days;

    Charts(Window window, ZoneId zone, Degrees degrees, Words words) {
        this.window = window;
        this.zone = zone;
        this.degrees = degrees;
        this.words = words;
        this.days = Days.in(words.language());
    }

    /** What the two guides are at; empty where nothing says so. */
    record Aims(Optional<Guide> temperature, List<Guide> humidity) {
        Aims {
            humidity = List.copyOf(humidity);
        }
    }

    /** One kind of chart: what is drawn in it, and in what unit. */
    private record Kind(String word, Set<Quantity> quantities, String sign, DoubleUnaryOperator shown) {}

    /** What was read by hand, at an instant, in standard units. */
    private record ByHand(Instant at, double value) {}

    List<ClimateChart> of(List<Told> told, Optional<MachinePicture> machine, Surroundings surroundings, Aims aims) {
        var temperature = new Kind(
                "temperature", Set.of(Quantity.AIR_TEMPERATURE, Quantity.EGG_TEMPERATURE), degrees.sign(), degrees::of);
        var humidity = new Kind("humidity", Set.of(Quantity.HUMIDITY), "%", value -> value);
        var wetBulb = new Kind("wet-bulb", Set.of(Quantity.WET_BULB), degrees.sign(), degrees::of);
        var charts = new ArrayList<ClimateChart>();
        chart(temperature, told, dry(machine), aims.temperature().stream().toList())
                .ifPresent(charts::add);
        chart(humidity, told, humidities(machine, surroundings), aims.humidity())
                .ifPresent(charts::add);
        chart(wetBulb, told, wet(machine), List.of()).ifPresent(charts::add);
        return charts;
    }

    private Optional<ClimateChart> chart(Kind kind, List<Told> told, List<ByHand> byHand, List<Guide> guides) {
        var own = told.stream()
                .filter(t -> kind.quantities().contains(t.channel().quantity()))
                .filter(t -> !t.stretches().isEmpty())
                .toList();
        var marks = byHand.stream().filter(m -> window.holds(m.at())).toList();
        if (own.isEmpty() && marks.isEmpty()) {
            return Optional.empty();
        }
        var values = DoubleStream.concat(
                        DoubleStream.concat(
                                own.stream()
                                        .flatMap(t -> t.stretches().stream())
                                        .flatMapToDouble(r -> DoubleStream.of(r.min(), r.max())),
                                marks.stream().mapToDouble(ByHand::value)),
                        guides.stream().flatMapToDouble(g -> DoubleStream.of(g.low(), g.high())))
                .map(kind.shown())
                .summaryStatistics();
        return Optional.of(new ClimateChart(
                kind.word(),
                words.say("chart." + kind.word() + ".title", kind.sign(), from(), to()),
                says(kind, own, marks),
                ClimateChart.Scale.over(values.getMin(), values.getMax()),
                new TimeTicks(window, zone, words.language()).all(),
                guides.stream()
                        .map(g -> new Guide(
                                kind.shown().applyAsDouble(g.low()),
                                kind.shown().applyAsDouble(g.high()),
                                g.label()))
                        .toList(),
                own.stream().map(t -> line(t, kind)).toList(),
                marks.stream()
                        .map(m -> new Mark(window.pct(m.at()), kind.shown().applyAsDouble(m.value())))
                        .toList(),
                own.stream()
                        .flatMap(t -> t.silences().stream())
                        .map(g -> new Silence(window.pct(g.from()), window.pct(g.to())))
                        .toList(),
                new ClimateChart.KeyWords(words.say("chart.byHand"), words.say("chart.silent")),
                numbers(kind, own, marks)));
    }

    private String from() {
        return days.stamp(window.from().atZone(zone));
    }

    private String to() {
        return days.stamp(window.to().atZone(zone));
    }

    private Line line(Told told, Kind kind) {
        var runs = new ArrayList<List<Stretch>>();
        var run = new ArrayList<Stretch>();
        Rollup before = null;
        for (var rollup : told.stretches()) {
            if (before != null && Duration.between(before.to(), rollup.from()).compareTo(told.longestStep()) > 0) {
                runs.add(run);
                run = new ArrayList<>();
            }
            run.add(new Stretch(
                    Math.max(0, window.pct(rollup.from())),
                    Math.min(100, window.pct(rollup.to())),
                    kind.shown().applyAsDouble(rollup.min()),
                    kind.shown().applyAsDouble(rollup.mean()),
                    kind.shown().applyAsDouble(rollup.max())));
            before = rollup;
        }
        runs.add(run);
        return new Line(
                words.say(
                        "chart.line",
                        told.channel().sensor().text(),
                        words.say("chart.stretch." + window.span().word())),
                runs);
    }

    private String says(Kind kind, List<Told> told, List<ByHand> marks) {
        if (told.isEmpty()) {
            return words.say(
                    "chart.saysByHand",
                    words.say("chart." + kind.word() + ".name"),
                    marks.size(),
                    spoken(kind, marks.stream().mapToDouble(ByHand::value).min().orElseThrow()),
                    spoken(kind, marks.stream().mapToDouble(ByHand::value).max().orElseThrow()));
        }
        var all = told.stream().flatMap(t -> t.stretches().stream()).toList();
        double readings = all.stream().mapToDouble(Rollup::count).sum();
        var said = words.say(
                "chart.says",
                words.say("chart." + kind.word() + ".name"),
                spoken(kind, all.stream().mapToDouble(r -> r.mean() * r.count()).sum() / readings),
                spoken(kind, all.stream().mapToDouble(Rollup::min).min().orElseThrow()),
                spoken(kind, all.stream().mapToDouble(Rollup::max).max().orElseThrow()));
        var silent = told.stream()
                .flatMap(t -> t.silences().stream())
                .map(g -> Duration.between(g.from(), g.to()))
                .reduce(Duration.ZERO, Duration::plus);
        return silent.isZero() ? said : said + " " + words.say("chart.saysSilent", Lengths.say(silent, words));
    }

    private String spoken(Kind kind, double value) {
        return degrees.number(kind.shown().applyAsDouble(value)) + "\u00a0" + kind.sign();
    }

    /** By hour over a day, by day over more. What was read by hand stands alone where there is no sensor. */
    private Numbers numbers(Kind kind, List<Told> told, List<ByHand> marks) {
        var rows = new ArrayList<List<String>>();
        var isHeldToABand = told.stream().anyMatch(one -> one.band().isPresent());
        for (var one : told) {
            for (var rollup : one.table()) {
                var row = new ArrayList<>(List.of(
                        window.span() == Span.DAY
                                ? days.stamp(rollup.from().atZone(zone))
                                : days.day(rollup.from().atZone(zone)),
                        one.channel().sensor().text(),
                        number(kind, rollup.min()),
                        number(kind, rollup.mean()),
                        number(kind, rollup.max())));
                if (isHeldToABand) {
                    row.add(outside(one, rollup));
                }
                rows.add(row);
            }
        }
        if (rows.isEmpty()) {
            return new Numbers(
                    List.of(words.say("head.at"), words.say("head.byHand", kind.sign())),
                    marks.stream()
                            .map(m -> List.of(days.stamp(m.at().atZone(zone)), number(kind, m.value())))
                            .toList());
        }
        var heads = new ArrayList<>(List.of(
                words.say("head.at"),
                words.say("head.sensor"),
                words.say("head.least", kind.sign()),
                words.say("head.mean"),
                words.say("head.greatest")));
        if (isHeldToABand) {
            heads.add(words.say("head.outside"));
        }
        return new Numbers(heads, rows);
    }

    /** For how long of the hour or day it was outside the band; nothing said where never. */
    private String outside(Told told, Rollup rollup) {
        return told.band().isEmpty() || rollup.outside().isZero() ? "" : Lengths.say(rollup.outside(), words);
    }

    private String number(Kind kind, double value) {
        return degrees.number(kind.shown().applyAsDouble(value));
    }

    private static List<ByHand> dry(Optional<MachinePicture> machine) {
        var read = new ArrayList<ByHand>();
        machine.ifPresent(m -> m.climate().forEach(note -> {
            var dry = note.what().dry();
            if (dry != null) {
                read.add(new ByHand(note.at().toInstant(), dry.celsius()));
            }
        }));
        return read;
    }

    private static List<ByHand> wet(Optional<MachinePicture> machine) {
        var read = new ArrayList<ByHand>();
        machine.ifPresent(m -> m.climate().forEach(note -> {
            var wet = note.what().wet();
            if (wet != null) {
                read.add(new ByHand(note.at().toInstant(), wet.celsius()));
            }
        }));
        return read;
    }

    /** As the hygrometer said, or as dry and wet bulb tell together. */
    private static List<ByHand> humidities(Optional<MachinePicture> machine, Surroundings surroundings) {
        var read = new ArrayList<ByHand>();
        machine.ifPresent(m -> m.climate().forEach(note -> {
            var what = note.what();
            var humidity = what.humidity();
            var dry = what.dry();
            var wet = what.wet();
            if (humidity != null) {
                read.add(new ByHand(note.at().toInstant(), humidity.pct()));
            } else if (dry != null && wet != null) {
                try {
                    var air = MoistAir.ofWetBulb(dry, wet, surroundings.barometer(), surroundings.ventilation());
                    read.add(new ByHand(note.at().toInstant(), air.humidity().pct()));
                } catch (OutOfRange impossible) {
                    // The pair cannot be; it stands in the book and in the list of readings by hand as it was noted.
                }
            }
        }));
        return read;
    }
}
