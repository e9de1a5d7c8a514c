package eggwright.desk.ledger;

import eggwright.book.entry.Kept;
import eggwright.book.fold.Ledger;
import eggwright.book.fold.MendTrail;
import eggwright.book.name.EntryId;
import eggwright.book.picture.Discrepancy;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.live.LiveBook;
import eggwright.desk.who.May;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.units.OutOfRange;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The book: its notes, newest first; the trail of one; what wants settling. */
public final class BookPages implements Pages {
    private static final int AT_ONCE = 60;

    private final LiveBook book;

    public BookPages(LiveBook book) {
        this.book = book;
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/book", May.READ, this::list);
        routes.read("/book/{id}", May.READ, this::trail);
    }

    private ZoneId zone() {
        return book.zone();
    }

    private Answer list(Visit visit) {
        int from = from(visit);
        var shown = book.ask(ledger -> ledger.newestFirst(from, AT_ONCE));
        int size = book.picture().entryCount();
        var older = from + AT_ONCE < size ? Optional.of("/book?from=" + (from + AT_ONCE)) : Optional.<String>empty();
        return new Answer.Page(
                200,
                "ledger/book.jte",
                new BookPage(
                        size, from == 0 ? doubts(visit.language()) : List.of(), days(shown, visit.language()), older));
    }

    private static int from(Visit visit) {
        var from = visit.asked().text("from");
        return from.matches("\\d{1,8}") ? Integer.parseInt(from) : 0;
    }

    private List<BookPage.Doubt> doubts(Locale language) {
        var words = new DoubtWords(language);
        var lines = new EntryWords(language);
        return book.picture().discrepancies().stream()
                .map(d -> new BookPage.Doubt(words.say(d), links(d, lines)))
                .toList();
    }

    private List<BookPage.Link> links(Discrepancy doubt, EntryWords lines) {
        return book.ask(ledger -> doubt.entries().stream()
                .flatMap(id -> ledger.entry(id).stream())
                .map(kept -> new BookPage.Link(
                        "/book/" + kept.entry().id(), lines.line(kept.entry().payload())))
                .toList());
    }

    private List<BookPage.Day> days(List<Kept> shown, Locale language) {
        var lines = new EntryWords(language);
        var words = Words.beside(BookPages.class, language);
        var hours = Days.in(language);
        var date = DateTimeFormatter.ofLocalizedDate(FormatStyle.FULL).withLocale(language);
        var days = new LinkedHashMap<String, List<BookPage.Line>>();
        book.ask(ledger -> {
            for (var kept : shown) {
                var at = kept.happened().atZone(zone());
                days.computeIfAbsent(date.format(at), d -> new ArrayList<>())
                        .add(new BookPage.Line(
                                "/book/" + kept.entry().id(),
                                hours.hour(at),
                                lines.line(kept.entry().payload()),
                                kept.entry().who().text(),
                                state(ledger, kept, words)));
            }
            return days;
        });
        return days.entrySet().stream()
                .map(d -> new BookPage.Day(d.getKey(), d.getValue()))
                .toList();
    }

    private static String state(Ledger ledger, Kept kept, Words words) {
        var id = kept.entry().id();
        return ledger.trail(id)
                .map(trail -> {
                    if (!trail.target().equals(id)) {
                        return trail.shown().equals(id) ? words.say("state.mend") : words.say("state.oldMend");
                    }
                    if (trail.standing() == MendTrail.Standing.WITHDRAWN) {
                        return words.say("state.withdrawn");
                    }
                    return trail.mends().isEmpty() ? "" : words.say("state.mended");
                })
                .orElseGet(() -> words.say("state.waits"));
    }

    private Answer trail(Visit visit) {
        EntryId id;
        try {
            id = EntryId.parse(visit.at("id"));
        } catch (OutOfRange notAnId) {
            return new Answer.NotThere(Optional.of(visit.at("id")));
        }
        var page = book.ask(ledger -> ledger.trail(id).map(trail -> page(ledger, trail, visit.language())));
        return page.<Answer>map(p -> new Answer.Page(200, "ledger/trail.jte", p))
                .orElseGet(() -> new Answer.NotThere(Optional.of(id.toString())));
    }

    private TrailPage page(Ledger ledger, MendTrail trail, Locale language) {
        var lines = new EntryWords(language);
        var words = Words.beside(BookPages.class, language);
        var versions = new ArrayList<TrailPage.Version>();
        ledger.entry(trail.target()).ifPresent(kept -> versions.add(version(kept, trail, lines, words)));
        for (var mend : trail.mends()) {
            ledger.entry(mend).ifPresent(kept -> versions.add(version(kept, trail, lines, words)));
        }
        var now = ledger.effective(trail.target());
        var doubtWords = new DoubtWords(language);
        var doubts = book.picture().discrepancies().stream()
                .filter(d -> d.entries().contains(trail.target())
                        || trail.mends().stream().anyMatch(d.entries()::contains))
                .map(doubtWords::say)
                .toList();
        return new TrailPage(
                now.map(e -> lines.line(e.payload())).orElseGet(() -> words.say("trail.withdrawn")),
                words.say(
                        trail.standing() == MendTrail.Standing.WITHDRAWN
                                ? "standing.withdrawn"
                                : trail.mends().isEmpty() ? "standing.counts" : "standing.mended"),
                versions,
                doubts,
                now.map(e -> "/entries/" + trail.target()),
                now.map(e -> "/entries/" + trail.target() + "/mend"),
                "/entries/" + trail.target() + "/withdraw");
    }

    private TrailPage.Version version(Kept kept, MendTrail trail, EntryWords lines, Words words) {
        var entry = kept.entry();
        var days = Days.in(words.language());
        return new TrailPage.Version(
                lines.line(entry.payload()),
                days.recordStamp(kept.happened().atZone(zone())),
                days.recordStamp(entry.noted().atZoneSameInstant(zone())),
                days.recordStamp(kept.received().atZone(zone())),
                entry.who().text(),
                entry.device().text(),
                entry.id().toString(),
                entry.id().equals(trail.shown()) ? words.say("trail.shown") : "");
    }
}
