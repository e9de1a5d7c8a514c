package eggwright.cli.farm;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.climate.care.SensorNow;
import eggwright.climate.development.HatchExpected;
import eggwright.climate.development.Span;
import eggwright.climate.development.When;
import eggwright.climate.machine.Aftermath;
import eggwright.climate.machine.MachineNow;
import eggwright.climate.machine.Night;
import eggwright.climate.machine.SetInside;
import eggwright.climate.weight.Dial;
import eggwright.climate.weight.Estimate;
import eggwright.climate.weight.SetAdvice;
import eggwright.climate.weight.SetLoss;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What is said of a machine. */
final class ClimateAnswer {
    private ClimateAnswer() {}

    static Answer of(MachineNow now, List<Night> nights, List<SensorNow> sensors, Instant at) {
        var air = now.air().air();
        var answer = Answer.of()
                .with("machine", now.machine().text())
                .with("at", at.toString())
                .with(
                        "air",
                        Answer.of()
                                .with("temperature_c", air.temperature().celsius())
                                .with("temperature_f", air.temperature().fahrenheit())
                                .with("temperature_known_by", word(now.air().warmth()))
                                .with("relative_humidity_pct", air.humidity().pct())
                                .with("humidity_known_by", word(now.air().wetness()))
                                .with("pressure_kpa", air.barometer().kilopascals()));
        var sets = new ArrayList<Value>();
        for (var set : now.sets()) {
            sets.add(new Value.Group(set(set, now.advice().sets())));
        }
        answer = answer.with("sets", new Value.Many(sets));
        answer = answer.with("dial", dial(now));
        return answer.with(
                        "nights",
                        new Value.Many(nights.stream()
                                .<Value>map(night -> new Value.Group(night(night)))
                                .toList()))
                .with(
                        "sensors",
                        new Value.Many(sensors.stream()
                                .<Value>map(sensor -> new Value.Group(SensorAnswer.of(sensor)))
                                .toList()));
    }

    private static Answer dial(MachineNow now) {
        return switch (now.advice().dial()) {
            case Dial.NothingLeft() -> Answer.of().with("step", "nothing_left");
            case Dial.WeighFirst() -> Answer.of().with("step", "weigh_first");
            case Dial.Leave(var why) -> Answer.of().with("step", "leave").with("why", word(why));
            case Dial.Turn turn ->
                Answer.of()
                        .with("step", "turn")
                        .with("relative_humidity_pct", turn.humidity().pct())
                        .with("wet_bulb_c", turn.wetBulb().celsius())
                        .with("wet_bulb_f", turn.wetBulb().fahrenheit())
                        .with(
                                "landings",
                                new Value.Many(turn.landings().stream()
                                        .<Value>map(one -> new Value.Group(Answer.of()
                                                .with(
                                                        "set",
                                                        one.advice()
                                                                .loss()
                                                                .set()
                                                                .text())
                                                .with(
                                                        "species",
                                                        one.advice()
                                                                .loss()
                                                                .species()
                                                                .word())
                                                .with("loss_pct", one.lossPct())))
                                        .toList()));
        };
    }

    private static Answer night(Night night) {
        var excursion = night.excursion();
        return Answer.of()
                .with("kind", word(excursion.kind()))
                .with("from", excursion.from().toString())
                .with("to", excursion.to().toString())
                .with("air_extreme_c", excursion.extremeCelsius())
                .with("known_by", word(night.how()))
                .with("noted", night.noted())
                .with(
                        "sets",
                        new Value.Many(night.sets().stream()
                                .<Value>map(set -> new Value.Group(night(set)))
                                .toList()));
    }

    private static Answer night(Night.SetNight set) {
        var cost = set.cost();
        return span(
                        "hours_later",
                        cost.hoursLater(),
                        span(
                                "felt_c",
                                cost.feltCelsius(),
                                Answer.of()
                                        .with("set", set.set().text())
                                        .with("species", set.species().word())
                                        .with("day", set.day())))
                .with("loss_low_pct", cost.lossLowPct())
                .with("loss_high_pct", cost.lossHighPct())
                .with(
                        "since",
                        new Value.Many(set.since().stream()
                                .<Value>map(since -> new Value.Group(since(since)))
                                .toList()))
                .with(
                        "sources",
                        Value.texts(cost.rules().stream()
                                .map(rule -> rule.source().words())
                                .distinct()
                                .toList()));
    }

    private static Answer since(Aftermath since) {
        return Answer.of()
                .with("told_by", word(since.told()))
                .with("at", since.at().toString())
                .with("lost", since.lost().count())
                .with("of", since.lost().of())
                .with("others_lost", since.othersLost().count())
                .with("others_of", since.othersLost().of());
    }

    private static Answer span(String key, Span span, Answer after) {
        return after.with(key + "_low", span.low())
                .with(key + "_likely", span.likely())
                .with(key + "_high", span.high());
    }

    private static Answer set(SetInside set, List<SetAdvice> advice) {
        var answer = Answer.of()
                .with("set", set.set().text())
                .with("species", set.species().word())
                .with("day", set.day())
                .with("eggs", set.eggs())
                .with("stored_days", set.storedDays())
                .with("loss", loss(set.loss()))
                .with(
                        "storage",
                        estimate("loss_pct", set.storage().loss())
                                .with("known_by", word(set.storage().air())))
                .with("hatch", hatch(set.hatch(), set.calendarMiddle()));
        for (var one : advice) {
            if (one.loss().equals(set.loss())) {
                return answer.with("advice", advice(one));
            }
        }
        return answer;
    }

    private static Answer loss(SetLoss loss) {
        return estimate("loss_pct", loss.now())
                .with("eggs_weighed", loss.eggsWeighed())
                .with("rests_on", word(loss.shells().from()))
                .with(
                        "left_aside",
                        Value.texts(loss.oddities().stream()
                                .map(o -> "tray " + o.tray() + " at " + o.at() + ": " + word(o.what()))
                                .toList()));
    }

    private static Answer estimate(String key, Estimate estimate) {
        return Answer.of()
                .with(key, estimate.pct())
                .with("low_pct", estimate.low())
                .with("high_pct", estimate.high());
    }

    private static Answer hatch(HatchExpected hatch, Instant calendar) {
        return Answer.of()
                .with("calendar_middle", calendar.toString())
                .with("first_pip", when(hatch.firstPip()))
                .with("from", when(hatch.from()))
                .with("middle", when(hatch.middle()))
                .with("to", when(hatch.to()))
                .with("hours_later", hatch.hoursLater().likely())
                .with("hours_later_low", hatch.hoursLater().low())
                .with("hours_later_high", hatch.hoursLater().high());
    }

    private static Answer when(When when) {
        return Answer.of()
                .with("early", when.early().toString())
                .with("likely", when.likely().toString())
                .with("late", when.late().toString());
    }

    private static Answer advice(SetAdvice advice) {
        var band = advice.aim().band();
        return Answer.of()
                .with("step", word(advice.step()))
                .with("until", advice.until().toString())
                .with("target_low_pct", band.lowPct())
                .with("target_high_pct", band.highPct())
                .with("target_source", advice.aim().source().words())
                .with("projected", estimate("loss_pct", advice.projected()))
                .with("required_humidity_pct", advice.neededPct())
                .with("required_humidity_error_pct", advice.neededErrorPct())
                .with("recommended_humidity_pct", advice.run().pct())
                .with("recommended_wet_bulb_c", advice.wetBulb().celsius())
                .with("recommended_wet_bulb_f", advice.wetBulb().fahrenheit());
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
