package eggwright.desk.machine;

import eggwright.climate.air.KnownBy;
import eggwright.climate.air.SetPoint;
import eggwright.climate.air.Surroundings;
import eggwright.climate.machine.MachineNow;
import eggwright.climate.machine.SetInside;
import eggwright.climate.weight.Advising;
import eggwright.climate.weight.MachineAdvice;
import eggwright.climate.weight.SetAdvice;
import eggwright.climate.weight.SetAdvice.Step;
import eggwright.desk.machine.OneMachinePage.Advice;
import eggwright.desk.words.Words;
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
        var why = all.stream().map(one -> reasons.of(inside(one), one)).toList();
        if (weighed.isEmpty()) {
            return new Advice(
                    words.say("advice.weighFirst"),
                    List.of(words.say("advice.weighFirst.then")),
                    why,
                    Optional.empty());
        }
        var together = weighed.size() == 1 ? Optional.<MachineAdvice>empty() : Optional.of(together(weighed));
        return new Advice(
                headline(weighed, together),
                then(weighed, together, all.size() - weighed.size()),
                why,
                together.map(t -> reasons.table(t, this::inside)));
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

    /** One humidity for those that were weighed. */
    private MachineAdvice together(List<SetAdvice> weighed) {
        var air = now.air().air();
        return Advising.of(
                weighed.stream()
                        .map(s -> new Advising.InMachine(
                                s.loss(), s.aim(), s.until(), inside(s).eggs()))
                        .toList(),
                new SetPoint(air.temperature(), air.humidity()),
                surroundings,
                Advising.LIMITS,
                at);
    }

    /** Where the dial should stand. */
    private record Dial(Humidity humidity, Temperature wetBulb) {}

    private static Dial dial(List<SetAdvice> weighed, Optional<MachineAdvice> together) {
        return together.flatMap(AdviceWords::dial)
                .orElseGet(() ->
                        new Dial(weighed.getFirst().run(), weighed.getFirst().wetBulb()));
    }

    private static Optional<Dial> dial(MachineAdvice together) {
        return together.compromise()
                .flatMap(c -> Optional.ofNullable(together.wetBulb()).map(wet -> new Dial(c.humidity(), wet)));
    }

    private boolean isLeft(List<SetAdvice> weighed, Dial dial) {
        return weighed.stream().allMatch(s -> s.step() == Step.STAY)
                || Math.abs(dial.humidity().pct() - now.air().air().humidity().pct()) < SAME_POINTS;
    }

    private String headline(List<SetAdvice> weighed, Optional<MachineAdvice> together) {
        var dial = dial(weighed, together);
        if (isLeft(weighed, dial)) {
            return words.say(
                    "advice.leave",
                    degrees.say(air(now.air().air().humidity())),
                    points(now.air().air().humidity().pct()));
        }
        return words.say(
                "advice.turn",
                degrees.say(dial.wetBulb()),
                points(dial.humidity().pct()));
    }

    private Temperature air(Humidity humidity) {
        return eggwright.egg.air.MoistAir.of(now.air().air().temperature(), humidity, surroundings.barometer())
                .wetBulb(surroundings.ventilation());
    }

    private List<String> then(List<SetAdvice> weighed, Optional<MachineAdvice> together, int unweighed) {
        var then = new ArrayList<String>();
        var dial = dial(weighed, together);
        boolean isLeft = isLeft(weighed, dial);
        if (isLeft) {
            then.add(words.say(
                    weighed.stream().allMatch(s -> s.step() == Step.STAY)
                            ? weighed.size() == 1 ? "then.landsAsItIs" : "then.allLandAsTheyAre"
                            : "then.isNear"));
        } else {
            then.add(words.say(
                    "then.standsAt",
                    degrees.say(air(now.air().air().humidity())),
                    points(now.air().air().humidity().pct()),
                    degrees.say(now.air().air().temperature())));
        }
        if (weighed.stream().anyMatch(s -> s.step() == Step.HALF_WAY)) {
            then.add(words.say(weighed.size() == 1 ? "then.halfWay" : "then.halfWaySome"));
        }
        weighed.stream().filter(s -> s.step() == Step.OUT_OF_REACH).forEach(s -> then.add(outOfReach(s)));
        if (unweighed > 0) {
            then.add(words.say("then.unweighed", unweighed));
        }
        if (now.air().wetness() == KnownBy.SET_POINT) {
            then.add(words.say(
                    "then.nobodyRead", points(now.air().air().humidity().pct())));
        }
        return then;
    }

    private String outOfReach(SetAdvice advice) {
        var set = advice.loss().set().text();
        return switch (advice.advice()) {
            case HumidityAdvice.Reachable reachable -> words.say("then.nearest", set);
            case HumidityAdvice.OutOfReach out ->
                switch (out.why()) {
                    case LOST_ALREADY -> words.say("then.lostAlready", set);
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
