package eggwright.desk.farm;

import eggwright.book.picture.Fate;
import eggwright.book.picture.Picture;
import eggwright.book.picture.SetPicture;
import eggwright.desk.picture.Numbers;
import eggwright.desk.picture.SeasonChart;
import eggwright.desk.picture.SeasonChart.State;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.rates.account.AccountLines;
import eggwright.today.schedule.FarmProfiles;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The last season by week: each set from the day it went in to its hatch, with its chicks. */
final class SeasonPicture {
    /** Sets further apart than this are of two seasons. Own choice, no source. */
    private static final int PAUSE_DAYS = 70;

    private final Chicks chicks;
    private final Locale language;
    private final Words words;
    private final Days days;

    SeasonPicture(Chicks chicks, Locale language) {
        this.chicks = chicks;
        this.language = language;
        this.words = Words.beside(SeasonPicture.class, language);
        this.days = Days.in(language);
    }

    /** Empty where no set was noted. */
    Optional<SeasonChart> of(Picture picture, LocalDate today) {
        var season = lastSeason(picture);
        if (season.isEmpty()) {
            return Optional.empty();
        }
        var from = season.getFirst().setOn();
        var to = season.stream()
                .map(s -> hatch(s, picture))
                .max(Comparator.naturalOrder())
                .orElse(from);
        var bars = new ArrayList<SeasonChart.Bar>();
        var numbers = new ArrayList<List<String>>();
        for (var set : season) {
            var hatch = hatch(set, picture);
            var name = set.name().text();
            var came = chicks(set, picture);
            bars.add(new SeasonChart.Bar(
                    words.say("season.bar", name, came),
                    set.setOn(),
                    hatch,
                    set.isRunning() ? State.UNDER_WAY : State.HATCHED));
            numbers.add(List.of(name, days.day(set.setOn()), days.day(hatch), Integer.toString(set.eggsSet()), came));
        }
        long running = season.stream().filter(SetPicture::isRunning).count();
        return Optional.of(new SeasonChart(
                "season",
                words.say("season.title"),
                words.say("season.says", season.size() - running, running),
                from,
                to,
                today.isBefore(from) || today.isAfter(to)
                        ? Optional.empty()
                        : Optional.of(new SeasonChart.Today(today, words.say("season.today", days.shortDay(today)))),
                bars,
                language,
                new Numbers(
                        List.of(
                                words.say("head.set"),
                                words.say("head.setOn"),
                                words.say("head.hatchOn"),
                                words.say("head.eggs"),
                                words.say("head.saleable")),
                        numbers)));
    }

    private static List<SetPicture> lastSeason(Picture picture) {
        var newestFirst = picture.sets().values().stream()
                .sorted(Comparator.comparing(SetPicture::setOn)
                        .thenComparing(SetPicture::startedAt)
                        .reversed())
                .toList();
        var season = new ArrayList<SetPicture>();
        for (var set : newestFirst) {
            if (!season.isEmpty()
                    && ChronoUnit.DAYS.between(set.setOn(), season.getLast().setOn()) > PAUSE_DAYS) {
                break;
            }
            season.add(set);
        }
        return season.reversed();
    }

    /** When it was taken off; the middle of its species' hatch window while it is in the machines. */
    private static LocalDate hatch(SetPicture set, Picture picture) {
        var off = set.takenOffAt();
        if (off != null && !set.isRunning()) {
            return off.toLocalDate().isBefore(set.setOn()) ? set.setOn() : off.toLocalDate();
        }
        var profiles = FarmProfiles.of(picture.farm());
        long most = set.species().stream()
                .map(s -> profiles.of(s).hatchWindowDays().value())
                .mapToLong(w -> Math.round((w.low() + w.high()) / 2))
                .max()
                .orElse(0);
        return set.setOn().plusDays(most);
    }

    private String chicks(SetPicture set, Picture picture) {
        if (set.isRunning()) {
            return chicks.of(set)
                    .map(f -> {
                        var range = f.chicks().interval(0.8);
                        return words.say("season.toCome", range.low(), range.high());
                    })
                    .orElseGet(() -> words.say("together"));
        }
        var lines = AccountLines.ofSet(picture, set.name());
        int saleable = lines.lines().stream()
                .filter(l -> l.fate() == Fate.SALEABLE)
                .mapToInt(l -> l.eggs())
                .sum();
        return lines.together().stream().anyMatch(l -> l.fate() == Fate.SALEABLE)
                ? words.say("together")
                : words.say("season.chicks", saleable);
    }
}
