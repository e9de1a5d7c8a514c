package eggwright.desk.machine;

import eggwright.climate.care.Finding;
import eggwright.climate.reading.Channel;
import eggwright.climate.sensor.Drift;
import eggwright.climate.sensor.Stuck;
import eggwright.desk.machine.SensorsPage.Look;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import java.time.ZoneId;

/** Words why to look at a sensor, and what to do about it. */
final class FindingWords {
    private final ZoneId zone;
    private final SensorValues values;
    private final Words words;
    private final Days days;

    FindingWords(ZoneId zone, SensorValues values, Words words) {
        this.zone = zone;
        this.values = values;
        this.words = words;
        this.days = Days.in(words.language());
    }

    Look of(Finding finding, Channel channel) {
        return switch (finding) {
            case Finding.Stays(var how) -> new Look(stuck(how, channel), words.say("finding.stuck.then"));
            case Finding.FromTwin(var twin, var how) ->
                new Look(twin(twin.text(), how, channel), words.say("finding.twin.then"));
            case Finding.FromHand(var how) ->
                new Look(
                        hand(how, channel),
                        words.say("finding.hand.then." + (channel.quantity().isTemperature() ? "dry" : "humidity")));
        };
    }

    private String stuck(Stuck how, Channel channel) {
        return words.say(
                "finding.stuck." + SensorWords.word(how.why()),
                values.asRead(channel, how.value()),
                Lengths.say(how.lasted(), words),
                days.stamp(how.from().atZone(zone)),
                Lengths.say(how.longestBefore(), words));
    }

    private String twin(String twin, Drift how, Channel channel) {
        return words.say(
                "finding.twin." + SensorWords.word(how.kind()),
                twin,
                values.difference(channel.quantity(), how.before()),
                values.difference(channel.quantity(), how.now()),
                how.compared(),
                values.size(channel.quantity(), how.tolerance()));
    }

    private String hand(Drift how, Channel channel) {
        return words.say(
                how.now() > 0 ? "finding.hand.above" : "finding.hand.below",
                how.compared(),
                values.size(channel.quantity(), how.now()),
                values.size(channel.quantity(), how.tolerance()));
    }
}
