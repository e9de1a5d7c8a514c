package eggwright.desk.machine;

import eggwright.climate.air.KnownBy;
import eggwright.climate.air.Surroundings;
import eggwright.climate.machine.MachineNow;
import eggwright.climate.machine.SetInside;
import eggwright.climate.weight.Advising;
import eggwright.climate.weight.Dial;
import eggwright.climate.weight.SetAdvice;
import eggwright.climate.weight.SetAdvice.Step;
import eggwright.desk.machine.OneMachinePage.Advice;
import eggwright.desk.part.TableShown;
import eggwright.desk.words.Words;
import eggwright.egg.air.MoistAir;
import eggwright.egg.loss.HumidityAdvice;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Words what to turn a machine to. Only sets whose own eggs were weighed have a voice: a habit that works is never set
 * against a table. Where nothing was weighed the advice is to weigh, and to leave the dial.
 */
final class AdviceWords {
    private final MachineNow now;
    private final Surroundings surroundings;
    private final Degrees degrees;
    private final Words words;
    private final AdviceReasons reasons;

    AdviceWords(MachineNow now, Surroundings surroundings, ZoneId zone, Degrees degrees, Words words) {
        this.now = now;
        this.surroundings = surroundings;
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
        var weighed = now.advice().weighed();
        var why = why(all);
        return switch (now.advice().dial()) {
            case Dial.NothingLeft() -> throw new IllegalStateException("Sets have days left, and the dial says none");
            case Dial.WeighFirst() ->
                new Advice(
                        words.say("advice.weighFirst"),
                        List.of(words.say("advice.weighFirst.then")),
                        why,
                        Optional.empty());
            case Dial.Leave leave -> new Advice(left(), then(weighed, leave), why, table(weighed, List.of()));
            case Dial.Turn turn ->
                new Advice(
                        turned(turn),
                        then(weighed, turn),
                        why,
                        table(
                                weighed,
                                turn.landings().stream()
                                        .map(Dial.Landing::lossPct)
                                        .toList()));
        };
    }

    /** Only where several sets share the one setting. */
    private Optional<TableShown> table(List<SetAdvice> weighed, List<Double> turnedPct) {
        return weighed.size() == 1 ? Optional.empty() : Optional.of(reasons.table(weighed, turnedPct, this::inside));
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

    private MoistAir air() {
        return now.air().air();
    }

    private String wetBulb() {
        return degrees.say(air().wetBulb(surroundings.ventilation()));
    }

    private String turned(Dial.Turn turn) {
        return words.say(
                "advice.turn",
                degrees.say(turn.wetBulb()),
                points(turn.humidity().pct()));
    }

    private String left() {
        return words.say("advice.leave", wetBulb(), points(air().humidity().pct()));
    }

    private List<String> then(List<SetAdvice> weighed, Dial dial) {
        var then = new ArrayList<String>();
        var many = weighed.size() == 1 ? ".one" : ".many";
        if (dial instanceof Dial.Leave(var why)) {
            then.add(
                    switch (why) {
                        case ALL_LAND -> words.say("then.landsAsItIs" + many);
                        case NEAR -> words.say("then.isNear" + many);
                    });
        } else {
            then.add(words.say(
                    "then.standsAt", wetBulb(), points(air().humidity().pct()), degrees.say(air().temperature())));
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
