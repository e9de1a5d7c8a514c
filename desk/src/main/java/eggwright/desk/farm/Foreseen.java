package eggwright.desk.farm;

import eggwright.book.entry.EggsSet;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Looked;
import eggwright.book.fold.Effective;
import eggwright.book.fold.Ledger;
import eggwright.book.name.SetName;
import eggwright.book.picture.SetPicture;
import eggwright.desk.live.LiveBook;
import eggwright.forecast.Forecaster;
import eggwright.forecast.SetForecast;
import eggwright.today.schedule.FarmProfiles;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What was foreseen of a set, on the day it was set and after each day's candling, by what the book had received by then.
 *
 * <p>Each costs a fold of the book and a forecast, so each is worked out once: what was known at an instant that has
 * passed does not change while the desk is open, since a late note is received late.
 */
final class Foreseen {
    /** More days than this make no clearer picture. Own choice. */
    private static final int MOST_DAYS = 6;

    private final LiveBook book;
    private final Map<Asked, Optional<SetForecast>> held = new ConcurrentHashMap<>();

    private record Asked(SetName set, Instant asOf) {}

    /** What was foreseen on one day of the set. */
    record Then(int day, SetForecast forecast) {}

    Foreseen(LiveBook book) {
        this.book = book;
    }

    /** In the order of the days; days on which nothing could be foreseen are left out. */
    List<Then> of(SetPicture set) {
        var found = new ArrayList<Then>();
        for (var moment : moments(set).entrySet()) {
            held.computeIfAbsent(new Asked(set.name(), moment.getValue()), this::workOut)
                    .ifPresent(forecast -> found.add(new Then(moment.getKey(), forecast)));
        }
        return List.copyOf(found);
    }

    /** By day of incubation, when the last of what was noted of it that day had been received. */
    private Map<Integer, Instant> moments(SetPicture set) {
        var byDay = book.ask(ledger -> {
            var latest = new TreeMap<Integer, Instant>();
            set.story().stream().flatMap(id -> ledger.effective(id).stream()).forEach(e -> {
                if (e.payload() instanceof EggsSet || e.payload() instanceof Looked) {
                    latest.merge(day(set, e), e.kept().knownFrom(), (a, b) -> a.isAfter(b) ? a : b);
                }
            });
            return latest;
        });
        while (byDay.size() > MOST_DAYS) {
            byDay.remove(List.copyOf(byDay.keySet()).get(byDay.size() - 2));
        }
        byDay.replaceAll((day, known) -> known.plus(Duration.ofMillis(1)));
        return byDay;
    }

    private static int day(SetPicture set, Effective entry) {
        return (int) ChronoUnit.DAYS.between(set.setOn(), entry.at().toLocalDate());
    }

    private Optional<SetForecast> workOut(Asked asked) {
        List<Kept> all = book.ask(Ledger::all);
        var then = Ledger.of(all.stream()
                        .filter(k -> !k.knownFrom().isAfter(asked.asOf()))
                        .toList())
                .picture();
        return Forecaster.of(then, FarmProfiles.of(then.farm())::of).sets().stream()
                .filter(f -> f.set().equals(asked.set()))
                .findFirst();
    }
}
