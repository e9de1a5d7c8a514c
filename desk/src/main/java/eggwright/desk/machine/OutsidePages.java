package eggwright.desk.machine;

import eggwright.book.name.MachineName;
import eggwright.climate.excursion.Excursion;
import eggwright.climate.machine.Alert;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingStore;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.live.LiveBook;
import eggwright.desk.part.OutsideShown;
import eggwright.desk.who.May;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.wire.RecordText;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What is outside its band now: for every page as it is drawn, and for its script, which asks again. */
public final class OutsidePages implements Pages, Supplier<OutsideShown> {
    /** No sensor reads faster than that matters, and pages are drawn more often. */
    private static final Duration HOLDS = Duration.ofSeconds(15);

    private static final Logger LOG = LoggerFactory.getLogger(OutsidePages.class);

    private final LiveBook book;
    private final Rooms rooms;
    private final Locale language;
    private Looked last = new Looked(Instant.MIN, -1, OutsideShown.NOTHING);

    private record Looked(Instant at, long version, OutsideShown shown) {}

    public OutsidePages(LiveBook book, ReadingStore readings, Locale language) {
        this.book = book;
        this.rooms = new Rooms(readings);
        this.language = language;
    }

    @Override
    public void addTo(Routes routes) {
        routes.tell("/api/outside", May.READ, visit -> Answer.json(RecordText.of(get())));
    }

    @Override
    public synchronized OutsideShown get() {
        var now = book.time().toInstant();
        var known = book.now();
        boolean isFresh = last.version() == known.version()
                && !now.isBefore(last.at())
                && Duration.between(last.at(), now).compareTo(HOLDS) < 0;
        if (!isFresh) {
            last = new Looked(now, known.version(), lookOrSayThatItCannot(now));
        }
        return last.shown();
    }

    /** Pages of the book are drawn even where readings cannot be read; but nobody is left to think that all is well. */
    private OutsideShown lookOrSayThatItCannot(Instant now) {
        try {
            return look(now);
        } catch (RuntimeException fault) {
            LOG.error("Readings could not be looked over", fault);
            var words = Words.beside(OutsidePages.class, language);
            return new OutsideShown(
                    "unknown", List.of(new OutsideShown.Place(words.say("outside.unknown"), MachinePaths.ALL)));
        }
    }

    private OutsideShown look(Instant now) {
        var alerts = rooms.outside(book.picture(), now);
        if (alerts.isEmpty()) {
            return OutsideShown.NOTHING;
        }
        var words = Words.beside(OutsidePages.class, language);
        // Only what a sensor says now is sounded; what it said before it fell silent is shown.
        return new OutsideShown(
                alerts.stream()
                        .filter(alert -> alert.hearing() == Alert.Hearing.NOW)
                        .map(alert -> alert.kind() + "@" + path(alert.place()))
                        .collect(Collectors.joining(" ")),
                alerts.stream()
                        .map(alert -> new OutsideShown.Place(text(alert, words), path(alert.place())))
                        .toList());
    }

    private String text(Alert alert, Words words) {
        var here = alert.place() instanceof ReadingPlace.InMachine(var machine) ? Optional.of(machine) : none();
        var degrees = Degrees.of(book.picture(), here, rooms.channels(alert.place()), language);
        var days = Days.in(language);
        boolean isCold = alert.kind() == Excursion.Kind.COLD;
        var key = switch (alert.hearing()) {
            case NOW -> isCold ? "outside.cold" : "outside.hot";
            case SILENT_SINCE -> isCold ? "outside.wasCold" : "outside.wasHot";
        };
        return words.say(
                key,
                RoomNames.say(alert.place(), words),
                degrees.say(alert.lastCelsius()),
                degrees.say(isCold ? alert.band().low() : alert.band().high()),
                days.stamp(alert.since().atZone(book.zone())),
                days.stamp(alert.lastAt().atZone(book.zone())));
    }

    private static Optional<MachineName> none() {
        return Optional.empty();
    }

    private static String path(ReadingPlace place) {
        return MachinePaths.of(place);
    }
}
