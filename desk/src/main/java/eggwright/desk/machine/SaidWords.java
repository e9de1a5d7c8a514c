package eggwright.desk.machine;

import eggwright.book.name.EntryId;
import eggwright.book.picture.SensorPicture;
import eggwright.climate.reading.Quantity;
import eggwright.desk.machine.OneMachinePage.Table;
import eggwright.desk.part.TableShown;
import eggwright.desk.part.TableShown.Cell;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Words what people said of a sensor, the latest first; each leads to its note, where it can be mended or withdrawn. */
final class SaidWords {
    private final ZoneId zone;
    private final SensorValues values;
    private final Words words;
    private final Days days;

    SaidWords(ZoneId zone, SensorValues values, Words words) {
        this.zone = zone;
        this.values = values;
        this.words = words;
        this.days = Days.in(words.language());
    }

    private record Line(OffsetDateTime at, EntryId entry, String text) {}

    Table of(SensorPicture said, Quantity quantity) {
        var lines = new ArrayList<Line>();
        for (var one : said.compared()) {
            lines.add(new Line(one.from(), one.entry(), compared(one, quantity)));
        }
        for (var one : said.trusted()) {
            lines.add(new Line(
                    one.from(),
                    one.entry(),
                    because(
                            words.say("said." + SensorWords.word(one.what().trust())),
                            one.what().why())));
        }
        for (var one : said.released()) {
            lines.add(new Line(
                    one.what().from(),
                    one.entry(),
                    because(
                            words.say("said.letIn", stamp(one.what().to())),
                            one.what().why())));
        }
        lines.sort(Comparator.comparing((Line line) -> line.at().toInstant()).reversed());
        return new Table(
                words.say("said.title"),
                "",
                new TableShown(
                        List.of(words.say("head.since"), words.say("head.whatWasSaid")),
                        lines.stream()
                                .map(line -> List.of(
                                        new Cell(stamp(line.at()), "/book/" + line.entry()), Cell.of(line.text())))
                                .toList()));
    }

    private String compared(SensorPicture.Compared one, Quantity quantity) {
        var what = one.what();
        var adds = values.difference(quantity, what.correction());
        var text = what.add() == null
                ? words.say("said.compared", String.valueOf(what.showed()), String.valueOf(what.reference()), adds)
                : words.say("said.offBy", adds);
        return what.by().isEmpty() ? text : words.say("said.by", text, what.by());
    }

    private String because(String text, String why) {
        return why.isEmpty() ? text : words.say("said.because", text, why);
    }

    private String stamp(OffsetDateTime at) {
        return days.stamp(at.atZoneSameInstant(zone));
    }
}
