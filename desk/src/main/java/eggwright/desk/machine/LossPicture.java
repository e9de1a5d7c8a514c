package eggwright.desk.machine;

import eggwright.climate.machine.SetInside;
import eggwright.climate.weight.Estimate;
import eggwright.climate.weight.LossAhead;
import eggwright.climate.weight.SetAdvice;
import eggwright.climate.weight.Shells;
import eggwright.desk.picture.ClimateChart;
import eggwright.desk.picture.LossChart;
import eggwright.desk.picture.LossChart.At;
import eggwright.desk.picture.Numbers;
import eggwright.desk.words.Words;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Draws the loss of a set that was weighed: so far, ahead, and where it should land. */
final class LossPicture {
    private static final double MINUTES_PER_DAY = 1440;

    private final Instant at;
    private final Words words;
    private final Losses losses;

    LossPicture(Instant at, Words words) {
        this.at = at;
        this.words = words;
        this.losses = new Losses(words);
    }

    /** Empty where the eggs were not weighed twice, or are past the day of their band: a guess is held against nothing. */
    Optional<LossChart> of(SetInside set, List<SetAdvice> advice) {
        return set.loss().shells().from() != Shells.From.WEIGHED || set.ahead().isEmpty()
                ? Optional.empty()
                : advice.stream()
                        .filter(one -> one.loss().equals(set.loss()))
                        .findFirst()
                        .map(one -> chart(set, one));
    }

    private LossChart chart(SetInside set, SetAdvice advice) {
        var weighed = set.loss().measured().stream()
                .map(m -> at(set, m.at(), m.loss()))
                .toList();
        double now = day(set, at);
        var way = new ArrayList<At>();
        way.add(new At(0, 0, 0, 0));
        weighed.stream().filter(w -> w.day() < now).forEach(way::add);
        way.add(at(set, at, set.loss().now()));
        set.ahead().forEach(ahead -> way.add(at(set, ahead.at(), ahead.loss())));
        var band = advice.aim().band();
        double most = Math.max(
                band.highPct(), way.stream().mapToDouble(At::high).max().orElse(0));
        return new LossChart(
                "loss-" + id(set),
                words.say("loss.title", losses.name(set)),
                says(set),
                Math.max(day(set, advice.until()), way.getLast().day()),
                ClimateChart.Scale.over(0, most),
                weighed,
                way,
                now,
                new LossChart.Band(day(set, advice.until()), band.lowPct(), band.highPct(), losses.band(advice.aim())),
                new LossChart.KeyWords(
                        words.say("loss.key.weighed"),
                        words.say("loss.key.way"),
                        words.say("loss.key.now"),
                        words.say("loss.key.day")),
                numbers(set));
    }

    private String says(SetInside set) {
        var said = new ArrayList<String>();
        for (var ahead : set.ahead()) {
            said.add(words.say("loss.by." + word(ahead), losses.say(ahead.loss())));
        }
        return String.join(" ", said);
    }

    private Numbers numbers(SetInside set) {
        var rows = new ArrayList<List<String>>();
        for (var measured : set.loss().measured()) {
            rows.add(row(set, words.say("loss.row.weighed"), measured.at(), measured.loss()));
        }
        rows.add(row(set, words.say("loss.key.now"), at, set.loss().now()));
        for (var ahead : set.ahead()) {
            rows.add(row(set, words.say("loss.row." + word(ahead)), ahead.at(), ahead.loss()));
        }
        return new Numbers(
                List.of(words.say("loss.head.what"), words.say("head.day"), words.say("loss.head.lost")), rows);
    }

    private List<String> row(SetInside set, String what, Instant when, Estimate loss) {
        return List.of(what, losses.number(day(set, when)), losses.say(loss));
    }

    private static String word(LossAhead ahead) {
        return ahead.point().name().toLowerCase(Locale.ROOT);
    }

    private At at(SetInside set, Instant when, Estimate loss) {
        return new At(day(set, when), Math.max(0, loss.low()), Math.max(0, loss.pct()), Math.max(0, loss.high()));
    }

    private static double day(SetInside set, Instant when) {
        return Duration.between(set.startedAt(), when).toMinutes() / MINUTES_PER_DAY;
    }

    /** Letters, digits and hyphens. */
    private static String id(SetInside set) {
        return Integer.toHexString(set.set().text().hashCode()) + "-"
                + set.species().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
