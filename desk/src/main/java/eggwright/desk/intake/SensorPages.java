package eggwright.desk.intake;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.SensorName;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Reach;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.door.Door;
import eggwright.desk.form.Field;
import eggwright.desk.form.Field.Choice;
import eggwright.desk.form.Form;
import eggwright.desk.live.LiveBook;
import eggwright.desk.part.NoticeShown;
import eggwright.desk.who.May;
import eggwright.desk.words.Words;
import eggwright.intake.Incoming;
import eggwright.intake.file.FarmPlaces;
import eggwright.intake.sensor.Sensors;
import eggwright.sheet.logger.ColumnUse;
import eggwright.units.OutOfRange;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The sensors: a token for each, shown once; what each told; and where they send. */
public final class SensorPages implements Pages {
    static final String HERE = "/settings/sensors";
    private static final String NAME = "name";
    private static final String READS = "reads";

    private final LiveBook book;
    private final Incoming incoming;
    private final SensorList list;
    private final Reach reach;
    private final int port;
    private final ReadingDoor door;

    /** @param port that this machine itself asks at; 0 where it is not known yet */
    public SensorPages(
            LiveBook book, ReadingStore readings, Incoming incoming, Reach reach, int port, Locale language) {
        this.book = book;
        this.incoming = incoming;
        this.list = new SensorList(book, readings, incoming);
        this.reach = reach;
        this.port = port;
        this.door = new ReadingDoor(incoming.intake(), language);
    }

    @Override
    public void addTo(Routes routes) {
        routes.read(HERE, May.READ, this::all);
        routes.write(HERE + "/add", May.RUN, this::add);
        routes.write(HERE + "/{sensor}/revoke", May.RUN, this::revoke);
        routes.hear(Door.SENSORS, May.TOKEN, door);
    }

    private static Words words(Visit visit) {
        return Words.beside(SensorPages.class, visit.language());
    }

    private Answer all(Visit visit) {
        var words = words(visit);
        var done = visit.asked().text("done");
        var notice = words.knows("done." + done)
                ? Optional.of(NoticeShown.kept(words.say("done." + done)))
                : Optional.<NoticeShown>empty();
        return page(200, visit, notice, blank(words));
    }

    private Answer page(int status, Visit visit, Optional<NoticeShown> notice, Form form) {
        return new Answer.Page(
                status,
                "intake/sensors.jte",
                list.page(visit, notice, May.RUN.lets(visit.visitor()) ? Optional.of(form) : Optional.empty()));
    }

    private Form blank(Words words) {
        var farm = FarmPlaces.of(book.picture());
        var reading = new ReadingWords(words);
        return Form.of(
                HERE + "/add",
                "",
                words.say("add.keep"),
                Field.Line.text(NAME, words.say("field.name")).withHint(words.say("field.name.hint")),
                PlaceField.of(farm, words),
                Choice.list(
                                READS,
                                words.say("field.reads"),
                                ColumnUse.all().stream()
                                        .filter(ColumnUse.Value.class::isInstance)
                                        .map(use -> new Choice.Option(use.word(), reading.use(use)))
                                        .toList())
                        .withHint(words.say("field.reads.hint")));
    }

    private Answer add(Visit visit) {
        var words = words(visit);
        var form = blank(words).filledFrom(visit.typed());
        if (Form.isToBeShownAgain(visit.typed())) {
            return page(200, visit, Optional.empty(), form);
        }
        var toMend = new ArrayList<Form.ToMend>();
        var channel = read(visit, words, toMend);
        if (channel.isEmpty()) {
            return page(422, visit, Optional.empty(), form.toMend(toMend));
        }
        return switch (incoming.sensors().add(channel.get())) {
            case Sensors.Added.In(var sensor, var token) ->
                new Answer.Page(200, "intake/added.jte", added(sensor.channel(), token, words));
            case Sensors.Added.Taken(var by) ->
                page(
                        422,
                        visit,
                        Optional.empty(),
                        form.toMend(List.of(new Form.ToMend(NAME, words.say("add.taken", by.name())))));
            case Sensors.Added.TooMany() ->
                page(
                        422,
                        visit,
                        Optional.empty(),
                        form.toMend(List.of(new Form.ToMend("", words.say("add.tooMany", Sensors.MOST)))));
        };
    }

    private Optional<Channel> read(Visit visit, Words words, List<Form.ToMend> toMend) {
        var typed = visit.typed();
        var place = FarmPlaces.of(book.picture()).named(typed.text(PlaceField.NAME));
        if (place.isEmpty()) {
            toMend.add(new Form.ToMend(PlaceField.NAME, words.say("add.noPlace")));
        }
        var use = ColumnUse.ofWord(typed.text(READS))
                .filter(ColumnUse.Value.class::isInstance)
                .map(ColumnUse.Value.class::cast);
        if (use.isEmpty()) {
            toMend.add(new Form.ToMend(READS, words.say("add.noReads")));
        }
        Optional<SensorName> name = Optional.empty();
        try {
            name = Optional.of(new SensorName(typed.text(NAME)));
        } catch (OutOfRange notAName) {
            toMend.add(new Form.ToMend(NAME, words.say("add.noName", SensorName.LONGEST)));
        }
        return place.isEmpty() || use.isEmpty() || name.isEmpty()
                ? Optional.empty()
                : Optional.of(new Channel(
                        place.get(), name.get(), use.get().quantity(), use.get().unit()));
    }

    private SensorAddedPage added(Channel channel, String token, Words words) {
        var addresses = Stream.concat(
                        port == 0 ? Stream.<String>empty() : Stream.of("http://127.0.0.1:" + port + Door.SENSORS),
                        reach.address().map(at -> at.resolve(Door.SENSORS)).map(URI::toString).stream())
                .toList();
        var broker = incoming.broker().map(b -> b.get().broker());
        return new SensorAddedPage(
                channel.sensor().text(),
                new ReadingWords(words).what(channel),
                token,
                addresses,
                addresses.isEmpty()
                        ? ""
                        : "curl -H 'Authorization: Bearer " + token + "' -d 99.5 " + addresses.getFirst(),
                broker.map(b -> b.address()).orElse(""),
                broker.map(b -> b.topic() + "/" + token).orElse(""));
    }

    private Answer revoke(Visit visit) {
        return incoming.sensors()
                .revoke(visit.at("sensor"))
                .map(sensor -> Answer.onward(HERE + "?done=revoked"))
                .orElseGet(() -> Answer.notThere(words(visit).say("noSuch")));
    }
}
