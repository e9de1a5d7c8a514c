package eggwright.desk.machine;

import eggwright.book.entry.SensorAt;
import eggwright.climate.care.HeldStretch;
import eggwright.climate.care.SensorNow;
import eggwright.climate.sensor.Doubt;
import eggwright.desk.machine.OneMachinePage.Table;
import eggwright.desk.part.TableShown;
import eggwright.desk.part.TableShown.Cell;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/** Words what of a sensor is held back, stretch by stretch, the latest first, each with the way to let it in. */
final class HeldWords {
    private static final int MOST_ROWS = 40;

    private final ZoneId zone;
    private final SensorValues values;
    private final Words words;
    private final Days days;

    HeldWords(ZoneId zone, SensorValues values, Words words) {
        this.zone = zone;
        this.values = values;
        this.words = words;
        this.days = Days.in(words.language());
    }

    Table of(SensorNow sensor, SensorAt at, SensorWords.Hand hand) {
        var heads = new ArrayList<>(List.of(
                words.say("head.from"),
                words.say("head.to"),
                words.say("head.readings"),
                words.say("head.said"),
                words.say("head.why")));
        boolean mayNote = hand == SensorWords.Hand.MAY_NOTE;
        if (mayNote) {
            heads.add(words.say("head.letIn"));
        }
        var rows = sensor.held().reversed().stream()
                .limit(MOST_ROWS)
                .map(stretch -> row(stretch, sensor, at, mayNote))
                .toList();
        return new Table(
                words.say("held.title"),
                words.say("sensor.heldText", sensor.heldCount())
                        + (sensor.held().size() > MOST_ROWS ? " " + words.say("mostRows", MOST_ROWS) : ""),
                new TableShown(heads, rows));
    }

    private List<Cell> row(HeldStretch stretch, SensorNow sensor, SensorAt at, boolean mayNote) {
        var least = values.asRead(sensor.channel(), stretch.least());
        var most = values.asRead(sensor.channel(), stretch.most());
        var row = new ArrayList<>(List.of(
                Cell.of(days.stamp(stretch.from().atZone(zone))),
                Cell.of(days.stamp(stretch.to().atZone(zone))),
                Cell.of(stretch.count()),
                Cell.of(least.equals(most) ? least : words.say("sensor.between", least, most)),
                Cell.of(words.say("doubt." + SensorWords.word(stretch.why())))));
        if (mayNote) {
            row.add(
                    stretch.why() == Doubt.SET_ASIDE
                            ? Cell.of("")
                            : new Cell(
                                    words.say("sensor.letIn"),
                                    SensorLinks.to("readings-released", at)
                                            .with("held_from", SensorLinks.moment(stretch.from(), zone))
                                            .with("held_to", SensorLinks.momentAfter(stretch.to(), zone))
                                            .path()));
        }
        return row;
    }
}
