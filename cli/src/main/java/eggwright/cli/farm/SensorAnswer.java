package eggwright.cli.farm;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.climate.care.Finding;
import eggwright.climate.care.HeldStretch;
import eggwright.climate.care.SensorNow;
import eggwright.climate.sensor.Drift;
import java.util.Locale;

/** What is said of one sensor. Offsets and differences are in °C, percent or hPa; what it read is in its own unit. */
final class SensorAnswer {
    private SensorAnswer() {}

    static Answer of(SensorNow sensor) {
        var channel = sensor.channel();
        var unit = channel.unit().suffix();
        var answer = Answer.of()
                .with("sensor", channel.sensor().text())
                .with("quantity", channel.quantity().word())
                .with("unit", unit)
                .with("first_at", sensor.extent().first().toString())
                .with("last_at", sensor.extent().last().toString());
        if (sensor.lastRead().isPresent()) {
            answer = answer.with("last_read_" + unit, sensor.lastRead().getAsDouble())
                    .with(
                            "last_corrected_" + standard(sensor),
                            sensor.lastCorrected().orElseThrow());
        }
        if (sensor.correction().isPresent()) {
            answer = answer.with(
                            "offset_" + standard(sensor),
                            sensor.correction().get().offset())
                    .with("offset_from", sensor.correction().get().from().toString());
        }
        if (sensor.aside().isPresent()) {
            answer = answer.with("set_aside_from", sensor.aside().get().from().toString());
        }
        return answer.with("held_count", sensor.heldCount())
                .with(
                        "held",
                        new Value.Many(sensor.held().stream()
                                .<Value>map(held -> new Value.Group(held(held, unit)))
                                .toList()))
                .with(
                        "findings",
                        new Value.Many(sensor.findings().stream()
                                .<Value>map(finding -> new Value.Group(finding(finding, sensor)))
                                .toList()));
    }

    private static String standard(SensorNow sensor) {
        return switch (sensor.channel().quantity()) {
            case AIR_TEMPERATURE, WET_BULB, EGG_TEMPERATURE -> "c";
            case HUMIDITY -> "pct";
            case PRESSURE -> "hpa";
        };
    }

    private static Answer held(HeldStretch held, String unit) {
        return Answer.of()
                .with("why", word(held.why()))
                .with("from", held.from().toString())
                .with("to", held.to().toString())
                .with("readings", held.count())
                .with("least_" + unit, held.least())
                .with("most_" + unit, held.most());
    }

    private static Answer finding(Finding finding, SensorNow sensor) {
        return switch (finding) {
            case Finding.Stays(var how) ->
                Answer.of()
                        .with("what", "stuck")
                        .with("how", word(how.why()))
                        .with("value_" + sensor.channel().unit().suffix(), how.value())
                        .with("from", how.from().toString())
                        .with("to", how.to().toString())
                        .with("longest_before_minutes", how.longestBefore().toMinutes());
            case Finding.FromTwin(var twin, var how) ->
                drift(Answer.of().with("what", "drift_from_twin").with("twin", twin.text()), how, sensor)
                        .with("days", how.compared());
            case Finding.FromHand(var how) ->
                drift(Answer.of().with("what", "drift_from_hand"), how, sensor)
                        .with("readings_by_hand", how.compared());
        };
    }

    private static Answer drift(Answer answer, Drift how, SensorNow sensor) {
        var unit = standard(sensor);
        return answer.with("how", word(how.kind()))
                .with("since", how.from().toString())
                .with("before_" + unit, how.before())
                .with("now_" + unit, how.now())
                .with("tolerance_" + unit, how.tolerance());
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
