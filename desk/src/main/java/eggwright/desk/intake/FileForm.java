package eggwright.desk.intake;

import eggwright.desk.form.Field;
import eggwright.desk.form.Field.Choice;
import eggwright.desk.form.Form;
import eggwright.desk.form.Typed;
import eggwright.desk.words.Words;
import eggwright.intake.file.FarmPlaces;
import eggwright.sheet.logger.ColumnUse;
import eggwright.sheet.logger.LoggerColumns;
import eggwright.sheet.logger.TimeForm;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The form in which a person says what the columns of a file hold, and where it belongs. */
final class FileForm {
    static final String COLUMN = "column.";
    private static final String DATES = "dates";
    private static final String DAY_FIRST = "day-first";
    private static final String MONTH_FIRST = "month-first";
    private static final String ZONE = "zone";

    private final FarmPlaces farm;
    private final ZoneId clock;
    private final Words words;

    /** @param clock that such a logger was said to keep; empty for the farm's */
    FileForm(FarmPlaces farm, Optional<ZoneId> clock, Words words) {
        this.farm = farm;
        this.clock = clock.orElse(farm.zone());
        this.words = words;
    }

    /**
     * The form, with what was found.
     *
     * @param open columns that wait for a person's word
     */
    Form of(String path, String place, List<String> header, LoggerColumns found, Set<String> open) {
        var reading = new ReadingWords(words);
        var options = ColumnUse.all().stream()
                .map(use -> new Choice.Option(use.word(), reading.use(use)))
                .toList();
        var fields = new ArrayList<Field>();
        fields.add(PlaceField.orInTheFile(farm, words)
                .withValue(place.isEmpty() && namesMachines(found) ? PlaceField.IN_THE_FILE : place));
        for (int i = 0; i < header.size(); i++) {
            var name = header.get(i);
            var use = found.byName().getOrDefault(name, new ColumnUse.Left());
            fields.add(Choice.list(COLUMN + i, words.say("field.column", name), options)
                    .withValue(open.contains(name) ? "" : use.word()));
        }
        fields.add(Choice.list(
                        DATES,
                        words.say("field.dates"),
                        List.of(
                                new Choice.Option("as-found", words.say("dates.asFound")),
                                new Choice.Option(DAY_FIRST, words.say("dates.dayFirst")),
                                new Choice.Option(MONTH_FIRST, words.say("dates.monthFirst"))))
                .withValue("as-found"));
        fields.add(Choice.list(
                        ZONE,
                        words.say("field.zone"),
                        zones().map(ZoneId::getId)
                                .distinct()
                                .map(id -> new Choice.Option(id, id.equals("Z") ? words.say("zone.utc") : id))
                                .toList())
                .withHint(words.say("field.zone.hint"))
                .withValue(clock.getId()));
        return Form.of(path, "", words.say("file.keep"), fields.toArray(Field[]::new));
    }

    private Stream<ZoneId> zones() {
        return Stream.of(farm.zone(), ZoneOffset.UTC, clock);
    }

    private static boolean namesMachines(LoggerColumns columns) {
        return columns.byName().values().stream().anyMatch(ColumnUse.Machine.class::isInstance);
    }

    /** What was said of the columns; empty where nothing was yet. */
    static Optional<LoggerColumns> columns(Typed typed, List<String> header) {
        var uses = new LinkedHashMap<String, ColumnUse>();
        for (int i = 0; i < header.size(); i++) {
            var name = header.get(i);
            ColumnUse.ofWord(typed.text(COLUMN + i)).ifPresent(use -> uses.put(name, use));
        }
        return uses.isEmpty() ? Optional.empty() : Optional.of(new LoggerColumns(uses));
    }

    /** Columns of which nothing was chosen though they were asked of. */
    static List<String> open(Typed typed, List<String> header) {
        var open = new ArrayList<String>();
        for (int i = 0; i < header.size(); i++) {
            if (typed.one(COLUMN + i).isPresent() && typed.text(COLUMN + i).isEmpty()) {
                open.add(COLUMN + i);
            }
        }
        return open;
    }

    static Optional<TimeForm> dates(Typed typed) {
        return switch (typed.text(DATES)) {
            case DAY_FIRST -> Optional.of(TimeForm.DAY_FIRST);
            case MONTH_FIRST -> Optional.of(TimeForm.MONTH_FIRST);
            default -> Optional.empty();
        };
    }

    ZoneId zone(Typed typed) {
        return zones().filter(zone -> zone.getId().equals(typed.text(ZONE)))
                .findFirst()
                .orElse(clock);
    }
}
