package eggwright.desk.farm;

import eggwright.book.name.SetName;
import eggwright.book.picture.Fate;
import eggwright.book.picture.SetPicture;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Place;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.farm.LedgerPage.Link;
import eggwright.desk.live.LiveBook;
import eggwright.desk.picture.ForecastBand;
import eggwright.desk.picture.ForecastBand.Point;
import eggwright.desk.picture.ForecastBand.Truth;
import eggwright.desk.picture.Numbers;
import eggwright.desk.who.May;
import eggwright.desk.words.Words;
import eggwright.forecast.SetForecast;
import eggwright.rates.account.AccountLines;
import eggwright.units.OutOfRange;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How the forecast of a set narrowed, and what came. On a page of its own, since only who asks should wait for it. */
final class ForeseenPages implements Pages {
    /** One day that was foreseen, drawn on to the hatch. */
    private static final int FIRST_AND_END = 2;

    private final LiveBook book;
    private final Foreseen foreseen;

    ForeseenPages(LiveBook book) {
        this.book = book;
        this.foreseen = new Foreseen(book);
    }

    static String path(SetPicture set) {
        return Shown.path(set) + "/forecast";
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/sets/{set}/forecast", May.READ, this::one);
    }

    private Answer one(Visit visit) {
        var words = Shown.words(visit);
        Optional<SetPicture> found;
        try {
            found = book.picture().set(new SetName(visit.at("set")));
        } catch (OutOfRange notAName) {
            found = Optional.empty();
        }
        return found.map(set -> Shown.page(page(set, words)))
                .orElseGet(() -> Answer.notThere(words.say("set.named", visit.at("set"))));
    }

    private LedgerPage page(SetPicture set, Words words) {
        var name = set.name().text();
        var then = foreseen.of(set);
        var truth = truth(set, words);
        return new LedgerPage(
                Place.SETS,
                words.say("foreseen.title", name),
                words.say(then.isEmpty() ? "foreseen.none" : "foreseen.lead"),
                List.of(new Link(Shown.path(set), words.say("foreseen.back", name))),
                then.isEmpty() ? List.of() : List.of(band(set, then, truth, words)),
                List.of());
    }

    private ForecastBand band(SetPicture set, List<Foreseen.Then> then, Optional<Truth> truth, Words words) {
        var points = new ArrayList<Point>();
        var numbers = new ArrayList<List<String>>();
        for (var at : then) {
            var point = point(at.day(), at.forecast());
            points.add(point);
            numbers.add(List.of(
                    words.say("foreseen.day", at.day()),
                    whole(point.middle()),
                    words.say("fromTo", whole(point.low80()), whole(point.high80())),
                    words.say("fromTo", whole(point.low95()), whole(point.high95()))));
        }
        var last = points.getLast();
        int hatchDay = (int)
                ChronoUnit.DAYS.between(set.setOn(), then.getLast().forecast().hatchOn());
        int end = Math.max(truth.map(Truth::day).orElse(hatchDay), last.day() + 1);
        points.add(new Point(end, last.low95(), last.low80(), last.middle(), last.high80(), last.high95()));
        truth.ifPresent(t -> numbers.add(List.of(t.label(), Long.toString(t.chicks()), "", "")));
        return new ForecastBand(
                "foreseen",
                words.say("foreseen.title", set.name().text()),
                says(points, truth, words),
                points,
                truth,
                words.say("foreseen.days"),
                words.say("foreseen.chicks"),
                new Numbers(
                        List.of(
                                words.say("head.day"),
                                words.say("foreseen.middle"),
                                words.say("foreseen.near"),
                                words.say("foreseen.wide")),
                        numbers));
    }

    private static String says(List<Point> points, Optional<Truth> truth, Words words) {
        var first = points.getFirst();
        var last = points.getLast();
        var said = words.say(
                points.size() > FIRST_AND_END ? "foreseen.says" : "foreseen.saysOnce",
                whole(first.low80()),
                whole(first.high80()),
                first.day(),
                whole(last.low80()),
                whole(last.high80()));
        return truth.map(t -> said + " " + words.say("foreseen.came", t.chicks()))
                .orElse(said);
    }

    private static Point point(int day, SetForecast forecast) {
        var near = forecast.chicks().interval(0.8);
        var wide = forecast.chicks().interval(0.95);
        return new Point(day, wide.low(), near.low(), forecast.chicks().quantile(0.5), near.high(), wide.high());
    }

    private static String whole(double chicks) {
        return Long.toString(Math.round(chicks));
    }

    /** What came of a set that is over; empty where its chicks were counted with others'. */
    private Optional<Truth> truth(SetPicture set, Words words) {
        var off = set.takenOffAt();
        if (set.isRunning() || off == null) {
            return Optional.empty();
        }
        var lines = AccountLines.ofSet(book.picture(), set.name());
        if (lines.together().stream().anyMatch(l -> l.fate() == Fate.SALEABLE)) {
            return Optional.empty();
        }
        long saleable = lines.lines().stream()
                .filter(l -> l.fate() == Fate.SALEABLE)
                .mapToLong(l -> l.eggs())
                .sum();
        int day = (int) Math.max(1, ChronoUnit.DAYS.between(set.setOn(), off.toLocalDate()));
        return Optional.of(new Truth(day, saleable, words.say("foreseen.truth", saleable)));
    }
}
