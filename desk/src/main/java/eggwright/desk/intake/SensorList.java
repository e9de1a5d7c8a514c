package eggwright.desk.intake;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.sensor.Held;
import eggwright.climate.sensor.Sifting;
import eggwright.climate.sensor.Sound;
import eggwright.desk.Visit;
import eggwright.desk.form.Form;
import eggwright.desk.live.LiveBook;
import eggwright.desk.part.NoticeShown;
import eggwright.desk.who.May;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.intake.Incoming;
import eggwright.intake.message.Complaint;
import eggwright.intake.message.Tally;
import eggwright.intake.sensor.Sensor;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the page of the sensors shows of each. */
final class SensorList {
    private final LiveBook book;
    private final ReadingStore readings;
    private final Incoming incoming;

    SensorList(LiveBook book, ReadingStore readings, Incoming incoming) {
        this.book = book;
        this.readings = readings;
        this.incoming = incoming;
    }

    SensorsPage page(Visit visit, Optional<NoticeShown> notice, Optional<Form> form) {
        var one = new Sight(Words.beside(SensorList.class, visit.language()), visit);
        var all = incoming.sensors().all().reversed();
        return new SensorsPage(
                notice,
                all.stream().filter(Sensor::mayTell).map(one::row).toList(),
                all.stream().filter(s -> !s.mayTell()).map(one::revoked).toList(),
                one.strangers(incoming.intake().nobodys()),
                incoming.broker()
                        .map(heard -> new BrokerWords(one.words, one::stamp).say(heard.get()))
                        .orElse(List.of()),
                incoming.folder().map(folder -> new FolderWords(one.words, one::stamp).say(folder.get())),
                form,
                May.NOTE.lets(visit.visitor()) ? SensorsPage.Bring.MAY : SensorsPage.Bring.MAY_NOT);
    }

    /** For one visit. */
    private final class Sight {
        private final Words words;
        private final ReadingWords reading;
        private final ComplaintWords complaints;
        private final Days days;
        private final boolean mayRevoke;

        Sight(Words words, Visit visit) {
            this.words = words;
            this.reading = new ReadingWords(words);
            this.complaints = new ComplaintWords(words);
            this.days = Days.in(visit.language());
            this.mayRevoke = May.RUN.lets(visit.visitor());
        }

        String stamp(Instant at) {
            return days.stamp(at.atZone(book.zone()));
        }

        SensorsPage.Row row(Sensor sensor) {
            var channel = sensor.channel();
            var extent = readings.extent(channel);
            var tally = incoming.intake().tally(sensor);
            return new SensorsPage.Row(
                    sensor.name(),
                    reading.what(channel),
                    extent.map(e -> last(channel, e.last())).orElseGet(() -> words.say("row.never")),
                    extent.flatMap(e -> held(channel, e.last()))
                            .map(this::doubt)
                            .orElse(""),
                    since(tally),
                    tally.last().map(this::refused).orElse(""),
                    mayRevoke ? SensorPages.HERE + "/" + sensor.id() + "/revoke" : "");
        }

        private String last(Channel channel, Instant at) {
            var last = readings.between(channel, at, at.plusMillis(1));
            return words.say("row.last", reading.value(last.value(last.count() - 1), channel.unit()), stamp(at));
        }

        /** Whether the last reading is held back, judged by those of the hour before it. */
        private Optional<Held> held(Channel channel, Instant last) {
            var around = readings.between(channel, last.minusMillis(6 * Sound.JUMP_MILLIS), last.plusMillis(1));
            return Sifting.of(channel, around, List.of()).held().stream()
                    .filter(h -> h.at().equals(last))
                    .findFirst();
        }

        private String doubt(Held held) {
            return words.say("doubt." + held.why().name().toLowerCase(Locale.ROOT));
        }

        private String since(Tally tally) {
            return tally.equals(Tally.NOTHING)
                    ? words.say("row.nothing")
                    : words.say("row.since", tally.kept(), tally.before(), tally.refused());
        }

        private String refused(Complaint.Last last) {
            return words.say("row.refused", stamp(last.at()), complaints.brief(last.why())) + " "
                    + complaints.next(last.why());
        }

        String revoked(Sensor sensor) {
            var revoked = sensor.revoked();
            var tally = incoming.intake().tally(sensor);
            return words.say(
                            "row.revoked",
                            sensor.name(),
                            reading.what(sensor.channel()),
                            revoked == null ? "" : stamp(revoked))
                    + (tally.refused() > 0 ? " " + words.say("row.stillSends", tally.refused()) : "");
        }

        String strangers(Tally nobodys) {
            return nobodys.last()
                    .map(last -> words.say("strangers", nobodys.refused(), stamp(last.at())))
                    .orElse("");
        }
    }
}
