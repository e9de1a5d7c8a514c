package eggwright.desk.machine;

import eggwright.climate.development.Span;
import eggwright.climate.excursion.Excursion;
import eggwright.climate.machine.Aftermath;
import eggwright.climate.machine.Night;
import eggwright.desk.machine.OneMachinePage.BadNight;
import eggwright.desk.part.TableShown;
import eggwright.desk.part.TableShown.Cell;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.trade.HarmRule;
import eggwright.units.Rate;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Words a bad night: when, how far, what each set may have felt, and what to do. */
final class NightWords {
    /** A night whose last reading is so fresh is not over. */
    private static final Duration FRESH = Duration.ofMinutes(30);

    private final Instant at;
    private final ZoneId zone;
    private final Degrees degrees;
    private final Words words;
    private final Days days;

    NightWords(Instant at, ZoneId zone, Degrees degrees, Words words) {
        this.at = at;
        this.zone = zone;
        this.degrees = degrees;
        this.words = words;
        this.days = Days.in(words.language());
    }

    BadNight of(Night night) {
        var excursion = night.excursion();
        var sentences = new ArrayList<String>();
        var length = Lengths.say(excursion.length(), words);
        var from = days.stamp(excursion.from().atZone(zone));
        var extreme = degrees.say(excursion.extremeCelsius());
        sentences.add(
                switch (night.how()) {
                    case READINGS -> words.say("night." + kind(excursion), from, length, extreme);
                    case READ_BY_HAND -> words.say("night.readByHand", from, length, extreme);
                    case NOTED -> words.say("night.noted." + kind(excursion), from, length, extreme);
                });
        if (!night.noted().isEmpty()) {
            sentences.add(words.say("night.note", night.noted()));
        }
        boolean isOver = excursion.to().isBefore(at.minus(FRESH));
        sentences.add(words.say(isOver ? "night.after" : "night.now." + kind(excursion)));
        return new BadNight(
                from + ", " + length,
                sentences,
                new TableShown(
                        List.of(
                                words.say("head.set"),
                                words.say("head.day"),
                                words.say("head.felt"),
                                words.say("head.later"),
                                words.say("head.lost"),
                                words.say("head.since")),
                        night.sets().stream().map(this::row).toList()),
                sources(night));
    }

    private static String kind(Excursion excursion) {
        return excursion.kind().name().toLowerCase(Locale.ROOT);
    }

    private List<Cell> row(Night.SetNight set) {
        var cost = set.cost();
        return List.of(
                Cell.of(words.say("night.set", set.set().text(), words.species(set.species()))),
                Cell.of(Integer.toString(set.day())),
                Cell.of(words.say(
                        "night.span",
                        degrees.say(cost.feltCelsius().low()),
                        degrees.say(cost.feltCelsius().high()))),
                Cell.of(hours(cost.hoursLater())),
                Cell.of(words.say("night.loss", Math.round(cost.lossLowPct()), Math.round(cost.lossHighPct()))),
                Cell.of(set.since().map(this::since).orElseGet(() -> words.say("night.notCounted"))));
    }

    private String since(Aftermath since) {
        var key = "night.since." + since.told().name().toLowerCase(Locale.ROOT);
        var here = words.say(key, days.day(since.at().atZone(zone)), rate(since.lost()));
        return since.othersLost().isEmpty() ? here : here + " " + words.say("night.others", rate(since.othersLost()));
    }

    private String rate(Rate rate) {
        return words.say("night.rate", rate.count(), rate.of(), String.format(words.language(), "%.1f", rate.pct()));
    }

    private String hours(Span hours) {
        long low = Math.round(hours.low());
        long high = Math.round(hours.high());
        return low == 0 && high == 0 ? words.say("night.noHours") : words.say("night.hours", low, high);
    }

    private String sources(Night night) {
        var keys = night.sets().stream()
                .flatMap(set -> set.cost().rules().stream())
                .map(HarmRule::source)
                .map(source -> source.words())
                .distinct()
                .collect(Collectors.joining(", "));
        return keys.isEmpty() ? words.say("night.noHarm") : words.say("night.sources", keys);
    }
}
