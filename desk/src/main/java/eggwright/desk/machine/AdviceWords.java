package eggwright.desk.machine;

import eggwright.climate.air.KnownBy;
import eggwright.climate.air.SetPoint;
import eggwright.climate.air.Surroundings;
import eggwright.climate.machine.MachineNow;
import eggwright.climate.machine.SetInside;
import eggwright.climate.weight.Advising;
import eggwright.climate.weight.SetAdvice;
import eggwright.climate.weight.SetAdvice.Step;
import eggwright.desk.machine.OneMachinePage.Advice;
import eggwright.desk.words.Words;
import eggwright.egg.air.MoistAir;
import eggwright.egg.loss.HumidityAdvice;
import eggwright.units.Humidity;
import eggwright.units.Temperature;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Words what to turn a machine to. Only sets whose own eggs were weighed have a voice: a habit that works is never set
 * against a table. Where nothing was weighed the advice is to weigh, and to leave the dial.
 */
final class AdviceWords {
    /** No dial and no wick is read closer: ours. */
    private static final double SAME_POINTS = 1;

    private final MachineNow now;
    private final Surroundings surroundings;
    private final Instant at;
    private final Degrees degrees;
    private final Words words;
    private final AdviceReasons reasons;

    AdviceWords(MachineNow now, Surroundings surroundings, Instant at, ZoneId zone, Degrees degrees, Words words) {
        this.now = now;
        this.surroundings = surroundings;
        this.at = at;
        this.degrees = degrees;
        this.words = words;
        this.reasons = new AdviceReasons(zone, words);
    }

    Advice advice() {
        var all = now.advice().sets();
        if (all.isEmpty()) {
            return now.sets().isEmpty()
                    ? alone(words.say("advice.empty"), List.of())
                    : alone(words.say("advice.past"), List.of(words.say("advice.past.then")));
        }
        var weighed = all.stream().filter(s -> s.step() != Step.WEIGH_FIRST).toList();
        var why = why(all);
        if (weighed.isEmpty()) {
            return new Advice(
                    words.say("advice.weighFirst"),
                    List.of(words.say("advice.weighFirst.then")),
                    why,
                    Optional.empty());
        }
        var turn = turn(weighed);
        return new Advice(
                turn.map(this::turned).orElseGet(this::left),
                then(weighed, turn),
                why,
                weighed.size() == 1
                        ? Optional.empty()
                        : Optional.of(
                                reasons.table(weighed, turn.map(Turn::lossesPct).orElse(List.of()), this::inside)));
    }

    private List<String> why(List<SetAdvice> all) {
        var why = new ArrayList<String>();
        var unweighed = new ArrayList<SetInside>();
        for (var one : all) {
            if (one.step() == Step.WEIGH_FIRST) {
                unweighed.add(inside(one));
            } else {
                why.add(reasons.of(inside(one), one));
            }
        }
        if (!unweighed.isEmpty()) {
            why.add(reasons.ofUnweighed(unweighed));
        }
        return why;
    }

    private static Advice alone(String headline, List<String> then) {
        return new Advice(headline, then, List.of(), Optional.empty());
    }

    private SetInside inside(SetAdvice advice) {
        return now.sets().stream()
                .filter(set -> set.loss().equals(advice.loss()))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Where to turn the dial to.
     *
     * @param lossesPct what each weighed set will have lost then; empty where there is only one
     */
    private record Turn(Humidity humidity, Temperature wetBulb, List<Double> lossesPct) {}

    /** Empty where it is to be left as it stands. */
    private Optional<Turn> turn(List<SetAdvice> weighed) {
        if (weighed.stream().allMatch(s -> s.step() == Step.STAY)) {
            return Optional.empty();
        }
        var turn = weighed.size() == 1
                ? Optional.of(
                        new Turn(weighed.getFirst().run(), weighed.getFirst().wetBulb(), List.of()))
                : together(weighed);
        return turn.filter(t -> Math.abs(t.humidity().pct() - air().humidity().pct()) >= SAME_POINTS);
    }

    /** One humidity for those that were weighed. */
    private Optional<Turn> together(List<SetAdvice> weighed) {
        var advice = Advising.of(
                weighed.stream()
                        .map(s -> new Advising.InMachine(
                                s.loss(), s.aim(), s.until(), inside(s).eggs()))
                        .toList(),
                new SetPoint(air().temperature(), air().humidity()),
                surroundings,
                Advising.LIMITS,
                at);
        return advice.compromise()
                .flatMap(c ->
                        Optional.ofNullable(advice.wetBulb()).map(wet -> new Turn(c.humidity(), wet, c.lossesPct())));
    }

    private MoistAir air() {
        return now.air().air();
    }

    private String wetBulb() {
        return degrees.say(air().wetBulb(surroundings.ventilation()));
    }

    private String turned(Turn turn) {
        return words.say(
                "advice.turn",
                degrees.say(turn.wetBulb()),
                points(turn.humidity().pct()));
    }

    private String left() {
        return words.say("advice.leave", wetBulb(), points(air().humidity().pct()));
    }

    private List<String> then(List<SetAdvice> weighed, Optional<Turn> turn) {
        var then = new ArrayList<String>();
        var many = weighed.size() == 1 ? ".one" : ".many";
        if (turn.isPresent()) {
            then.add(words.say(
                    "then.standsAt", wetBulb(), points(air().humidity().pct()), degrees.say(air().temperature())));
        } else if (weighed.stream().allMatch(s -> s.step() == Step.STAY)) {
            then.add(words.say("then.landsAsItIs" + many));
        } else {
            then.add(words.say("then.isNear" + many));
        }
        if (weighed.stream().anyMatch(s -> s.step() == Step.HALF_WAY)) {
            then.add(words.say("then.halfWay" + many));
        }
        weighed.stream().filter(s -> s.step() == Step.OUT_OF_REACH).forEach(s -> then.add(outOfReach(s)));
        if (now.air().wetness() == KnownBy.SET_POINT) {
            then.add(words.say("then.nobodyRead", points(air().humidity().pct())));
        }
        return then;
    }

    private String outOfReach(SetAdvice advice) {
        var set = advice.loss().set().text();
        return switch (advice.advice()) {
            case HumidityAdvice.Reachable reachable -> words.say("then.nearest", set);
            case HumidityAdvice.OutOfReach out ->
                switch (out.why()) {
                    case LOST_ALREADY ->
                        words.say(
                                "then.lostAlready",
                                set,
                                points(Advising.LIMITS.high().pct()));
                    case TOO_WET ->
                        words.say(
                                "then.tooWet",
                                set,
                                points(Advising.LIMITS.high().pct()));
                    case TOO_DRY ->
                        words.say(
                                "then.tooDry", set, points(Advising.LIMITS.low().pct()));
                    case ROOM_TOO_WET -> words.say("then.roomTooWet", set);
                };
        };
    }

    static String points(double pct) {
        return Long.toString(Math.round(pct));
    }
}
