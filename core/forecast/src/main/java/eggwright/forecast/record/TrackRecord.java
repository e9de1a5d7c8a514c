package eggwright.forecast.record;

import eggwright.book.entry.Origin;
import eggwright.book.fold.Effective;
import eggwright.book.fold.Ledger;
import eggwright.book.name.SetName;
import eggwright.book.picture.Picture;
import eggwright.book.picture.SetPicture;
import eggwright.forecast.Forecaster;
import eggwright.forecast.SetForecast;
import eggwright.forecast.history.Passage;
import eggwright.forecast.history.Passages;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import eggwright.units.Rate;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Predicate;

/** Judges forecasts of finished sets by what was known on the day. */
public record TrackRecord(List<Forecasted> forecasts) {
    public TrackRecord {
        forecasts = List.copyOf(forecasts);
    }

    /**
     * @param stop asked between forecasts; answering yes ends early with what there is
     */
    public static TrackRecord of(Ledger ledger, Function<Species, SpeciesProfile> profiles, BooleanSupplier stop) {
        return of(ledger, profiles, any -> true, stop);
    }

    /** Judges only the sets that are wanted. */
    static TrackRecord of(
            Ledger ledger,
            Function<Species, SpeciesProfile> profiles,
            Predicate<SetName> wanted,
            BooleanSupplier stop) {
        var picture = ledger.picture();
        var found = new ArrayList<Forecasted>();
        for (var passage : Passages.of(picture)) {
            if (passage.progress() == Passage.Progress.FINISHED && wanted.test(passage.set())) {
                for (var moment : moments(ledger, picture, passage)) {
                    if (stop.getAsBoolean()) {
                        return new TrackRecord(found);
                    }
                    judge(ledger, passage, moment, profiles, found);
                }
            }
        }
        return new TrackRecord(found);
    }

    private record At(Forecasted.Moment moment, Instant asOf, Origin origin) {}

    private static void judge(
            Ledger ledger, Passage passage, At at, Function<Species, SpeciesProfile> profiles, List<Forecasted> found) {
        // The first look is often the last: the same instant knows the same.
        var same = found.stream()
                .filter(f -> f.set().equals(passage.set()) && f.asOf().equals(at.asOf()))
                .map(Forecasted::forecast)
                .findFirst();
        same.or(() -> Forecaster.of(ledger.asOf(at.asOf()).picture(), profiles, passage.set())
                        .map(SetForecast::chicks))
                .ifPresent(chicks -> found.add(new Forecasted(
                        passage.set(), at.moment(), at.asOf(), chicks, passage.saleable(), at.origin())));
    }

    private static List<At> moments(Ledger ledger, Picture picture, Passage passage) {
        var set = picture.set(passage.set()).orElseThrow();
        var looks = looks(ledger, set);
        var start = set.story().stream()
                .flatMap(id -> ledger.effective(id).stream())
                .filter(e -> e.payload() instanceof eggwright.book.entry.EggsSet)
                .toList();
        var moments = new ArrayList<At>();
        if (!start.isEmpty()) {
            moments.add(at(Forecasted.Moment.SET_DAY, start));
        }
        if (!looks.isEmpty()) {
            int firstDay = set.loads().values().stream()
                    .flatMap(l -> l.looks().stream())
                    .mapToInt(l -> l.day())
                    .min()
                    .orElse(0);
            var firsts = looks.stream().filter(e -> day(set, e) <= firstDay + 1).toList();
            moments.add(at(Forecasted.Moment.AFTER_FIRST_LOOK, firsts));
            moments.add(at(Forecasted.Moment.AFTER_LAST_LOOK, looks));
        }
        return moments;
    }

    private static List<Effective> looks(Ledger ledger, SetPicture set) {
        return set.story().stream()
                .flatMap(id -> ledger.effective(id).stream())
                .filter(e -> e.payload() instanceof eggwright.book.entry.Looked)
                .toList();
    }

    private static long day(SetPicture set, Effective entry) {
        return java.time.temporal.ChronoUnit.DAYS.between(
                set.setOn(), entry.at().toLocalDate());
    }

    private static At at(Forecasted.Moment moment, List<Effective> entries) {
        var last = Instant.MIN;
        for (var entry : entries) {
            var known = entry.kept().knownFrom();
            if (known.isAfter(last)) {
                last = known;
            }
        }
        return new At(
                moment,
                last.plus(Duration.ofMillis(1)),
                entries.getFirst().entry().origin());
    }

    /** How often the plain range of a level held. */
    public Rate held(Forecasted.Moment moment, Origin origin, double level) {
        var mine = of(moment, origin);
        return new Rate(mine.stream().filter(f -> f.held(level)).count(), mine.size());
    }

    /** How often the range with randomised ends held, by a fixed seed. */
    public Rate heldRandomised(Forecasted.Moment moment, Origin origin, double level) {
        var random = new SplittableRandom(7);
        var mine = of(moment, origin);
        double tail = (1 - level) / 2;
        long held = 0;
        for (var forecast : mine) {
            double place = forecast.place(random.nextDouble());
            if (place >= tail && place <= 1 - tail) {
                held++;
            }
        }
        return new Rate(held, mine.size());
    }

    public List<Forecasted> of(Forecasted.Moment moment, Origin origin) {
        return forecasts.stream()
                .filter(f -> f.moment() == moment && f.origin() == origin)
                .toList();
    }

    public List<SetName> sets() {
        return forecasts.stream().map(Forecasted::set).distinct().toList();
    }
}
