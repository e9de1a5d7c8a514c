package eggwright.sheet.logger;

import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingUnit;
import eggwright.sheet.problem.Near;
import eggwright.sheet.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the columns of a file: by what a person said, else by their names, else by what stands in them. What cannot be
 * told is asked, never guessed: a unit, or whether days or months come first.
 */
final class Looking {
    /** No machine, egg room or brooder is warmer in °C, and none that holds eggs is colder in °F: ours. */
    private static final double CELSIUS_TO_FAHRENHEIT = 45;

    /** In this range a temperature may be either, a warm machine in °C or a cold egg room in °F: ours. */
    private static final double FIRST_EITHER = 33;

    private static final double LAST_ONLY_CELSIUS = 41;

    /** Rows that are shown to a person. */
    private static final int SHOWN = 5;

    private final String file;
    private final Sample sample;
    private final DecimalMark mark;
    private final Map<String, ColumnUse> uses = new LinkedHashMap<>();
    private final List<Problem> questions = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private Looking(String file, Sample sample) {
        this.file = file;
        this.sample = sample;
        this.mark = sample.mark();
    }

    /**
     * @param said what a person, or the last import of such a file, said of some or all columns
     * @param dates an order of days and months that a person gave; empty where the file is to tell
     */
    static Looked at(String file, Sample sample, Optional<LoggerColumns> said, Optional<TimeForm> dates) {
        return new Looking(file, sample).look(said, dates);
    }

    private Looked look(Optional<LoggerColumns> said, Optional<TimeForm> dates) {
        if (sample.rows().isEmpty()) {
            ask(
                    null,
                    null,
                    "holds no row with a time and a number",
                    "Name a file that a logger wrote, as CSV or XLSX.");
            return Looked.InDoubt.unseen(questions);
        }
        said.ifPresent(this::takeSaid);
        var form = time(dates);
        for (int i = 0; i < sample.header().size(); i++) {
            if (!uses.containsKey(sample.header().get(i))) {
                uses.put(sample.header().get(i), said.isPresent() ? new ColumnUse.Left() : guess(i));
            }
        }
        said.ifPresentOrElse(s -> checkUnits(), this::tellLeft);
        if (uses.values().stream().noneMatch(ColumnUse.Value.class::isInstance)) {
            ask(
                    null,
                    null,
                    "has no column that is known to hold a reading",
                    "Say which it is, as in --columns \"" + sample.header().getLast() + "=air_temperature_f\".");
        }
        return questions.isEmpty() && form.isPresent()
                ? new Looked.Seen(
                        file,
                        sample.header(),
                        sample.headerRow(),
                        new LoggerColumns(ordered()),
                        form.get(),
                        some(),
                        notes)
                : new Looked.InDoubt(questions, sample.header(), new LoggerColumns(ordered()), some());
    }

    private List<List<String>> some() {
        return sample.rows().stream().limit(SHOWN).map(LoggerRows.Row::cells).toList();
    }

    private Map<String, ColumnUse> ordered() {
        var ordered = new LinkedHashMap<String, ColumnUse>();
        for (var name : sample.header()) {
            ordered.put(name, uses.getOrDefault(name, new ColumnUse.Left()));
        }
        return ordered;
    }

    private void takeSaid(LoggerColumns said) {
        said.byName().forEach((name, use) -> {
            if (sample.header().contains(name)) {
                uses.put(name, use);
            } else {
                var near = Near.to(name, sample.header());
                ask(
                        null,
                        null,
                        "has no column \"" + name + "\"",
                        near.map(n -> "Is it \"" + n + "\"?")
                                .orElse("It has " + String.join(", ", sample.header()) + "."));
            }
        });
    }

    private Optional<TimeForm> time(Optional<TimeForm> dates) {
        if (uses.values().stream().noneMatch(u -> isTime(u))) {
            guessTime();
        }
        var written = written();
        if (written.isEmpty()) {
            ask(
                    null,
                    null,
                    "has no column that is known to hold the time",
                    "Say which it is, as in --columns \"" + sample.header().getFirst()
                            + "=time\", or name a date and a clock column.");
            return Optional.empty();
        }
        var forms = Times.likely(dates.map(Set::of).orElseGet(() -> Times.forms(written)), written);
        if (forms.contains(TimeForm.YEAR_FIRST)) {
            return Optional.of(TimeForm.YEAR_FIRST);
        }
        if (forms.size() == 1) {
            var form = forms.iterator().next();
            if (dates.isEmpty() && Times.forms(written).size() > 1) {
                notes.add(
                        form == TimeForm.DAY_FIRST
                                ? "Days come before months in its dates."
                                : "Months come before days in its dates.");
            }
            return Optional.of(form);
        }
        if (forms.isEmpty()) {
            var odd = written.stream()
                    .filter(w -> Times.forms(List.of(w)).isEmpty())
                    .findFirst()
                    .orElse(written.getFirst());
            ask(null, odd, "is not a time that can be read", "Write it like 2027-04-05 06:00.");
            return Optional.empty();
        }
        ask(
                null,
                written.getFirst(),
                "may have the day or the month first",
                "Say which: --dates day-first or --dates month-first.");
        return Optional.empty();
    }

    private static boolean isTime(ColumnUse use) {
        return use instanceof ColumnUse.Time || use instanceof ColumnUse.Date || use instanceof ColumnUse.Clock;
    }

    /** Times as one text each: a date and a clock column are put together. */
    private List<String> written() {
        var layout = new Layout(sample.header(), uses);
        return sample.rows().stream()
                .map(layout::time)
                .flatMap(Optional::stream)
                .filter(t -> !t.isEmpty())
                .toList();
    }

    private void guessTime() {
        int best = -1;
        int bestScore = 0;
        for (int i = 0; i < sample.header().size(); i++) {
            var cells = sample.column(i);
            var words = new HeaderWords(sample.header().get(i)).timeWords();
            boolean isEpoch = words > 0
                    && cells.stream()
                            .allMatch(c -> TimeForm.SECONDS.read(c).isPresent()
                                    || TimeForm.MILLISECONDS.read(c).isPresent());
            boolean isWhole = !cells.isEmpty()
                    && cells.stream()
                            .limit(50)
                            .allMatch(c -> !Times.forms(List.of(c)).isEmpty());
            int score = isEpoch || (isWhole && hasClock(cells)) ? 1 + words : 0;
            if (score > bestScore) {
                best = i;
                bestScore = score;
            }
        }
        if (best >= 0) {
            uses.put(sample.header().get(best), new ColumnUse.Time());
            return;
        }
        Optional<Integer> date = first(Sample::isDate);
        Optional<Integer> clock = first(Sample::isClock);
        if (date.isPresent() && clock.isPresent()) {
            uses.put(sample.header().get(date.get()), new ColumnUse.Date());
            uses.put(sample.header().get(clock.get()), new ColumnUse.Clock());
        }
    }

    private static boolean hasClock(List<String> cells) {
        return cells.getFirst().contains(":");
    }

    private Optional<Integer> first(java.util.function.Predicate<String> kind) {
        for (int i = 0; i < sample.header().size(); i++) {
            var cells = sample.column(i);
            if (!cells.isEmpty() && cells.stream().limit(50).allMatch(kind)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private ColumnUse guess(int index) {
        var name = sample.header().get(index);
        var words = new HeaderWords(name);
        var middle = sample.middle(index, mark);
        if (middle.isEmpty()) {
            return words.saysMachine()
                    ? new ColumnUse.Machine()
                    : words.saysSensor() ? new ColumnUse.Sensor() : new ColumnUse.Left();
        }
        var quantity = words.quantity();
        if (quantity.isEmpty()) {
            return new ColumnUse.Left();
        }
        return switch (quantity.get()) {
            case HUMIDITY -> new ColumnUse.Value(Quantity.HUMIDITY, ReadingUnit.PERCENT);
            case PRESSURE -> new ColumnUse.Value(Quantity.PRESSURE, ReadingUnit.HECTOPASCAL);
            case AIR_TEMPERATURE, WET_BULB, EGG_TEMPERATURE ->
                unit(name, words, middle.getAsDouble())
                        .<ColumnUse>map(unit -> new ColumnUse.Value(quantity.get(), unit))
                        .orElseGet(ColumnUse.Left::new);
        };
    }

    private Optional<ReadingUnit> unit(String name, HeaderWords words, double middle) {
        var said = words.unit();
        if (said.isPresent()) {
            contradict(name, said.get(), middle);
            return said;
        }
        if (middle > CELSIUS_TO_FAHRENHEIT) {
            notes.add("Column \"" + name + "\" names no unit; its readings lie about " + shown(middle)
                    + ", so they are taken for °F.");
            return Optional.of(ReadingUnit.FAHRENHEIT);
        }
        if (middle < LAST_ONLY_CELSIUS && (middle < FIRST_EITHER - 3 || middle > FIRST_EITHER + 2)) {
            notes.add("Column \"" + name + "\" names no unit; its readings lie about " + shown(middle)
                    + ", so they are taken for °C.");
            return Optional.of(ReadingUnit.CELSIUS);
        }
        ask(name, shown(middle), "may be °C or °F", "Say which, as in --columns \"" + name + "=air_temperature_c\".");
        return Optional.empty();
    }

    /** What a person said is held against the readings as well. */
    private void checkUnits() {
        uses.forEach((name, use) -> {
            int index = sample.header().indexOf(name);
            if (use instanceof ColumnUse.Value(var quantity, var unit) && quantity.isTemperature() && index >= 0) {
                sample.middle(index, mark).ifPresent(middle -> contradict(name, unit, middle));
            }
        });
    }

    private void contradict(String name, ReadingUnit unit, double middle) {
        if (unit == ReadingUnit.CELSIUS && middle > CELSIUS_TO_FAHRENHEIT) {
            ask(
                    name,
                    shown(middle),
                    "is no temperature of eggs or chicks in °C: is it Fahrenheit",
                    "Then say so, as in --columns \"" + name + "=air_temperature_f\".");
        }
        if (unit == ReadingUnit.FAHRENHEIT && middle > FIRST_EITHER + 2 && middle < LAST_ONLY_CELSIUS) {
            ask(
                    name,
                    shown(middle),
                    "is near freezing in °F: is it Celsius",
                    "Then say so, as in --columns \"" + name + "=air_temperature_c\".");
        }
    }

    private void tellLeft() {
        var left = uses.entrySet().stream()
                .filter(e -> e.getValue() instanceof ColumnUse.Left)
                .map(e -> "\"" + e.getKey() + "\"")
                .toList();
        if (!left.isEmpty()) {
            notes.add("Not taken: " + String.join(", ", left) + ".");
        }
    }

    private void ask(
            @org.jspecify.annotations.Nullable String column,
            @org.jspecify.annotations.Nullable String value,
            String what,
            String right) {
        questions.add(new Problem(file, null, column, value, what, right));
    }

    private static String shown(double number) {
        return String.valueOf(Math.round(number * 10) / 10.0);
    }
}
