package eggwright.climate.care;

import eggwright.climate.air.HandRead;
import eggwright.climate.air.Surroundings;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Readings;
import eggwright.climate.sensor.Corrections;
import eggwright.egg.air.MoistAir;
import eggwright.units.Humidity;
import eggwright.units.OutOfRange;
import eggwright.units.Temperature;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** Puts what a sensor read beside what a keeper read at the same time. */
final class HandPairs {
    /** A note's minute is seldom the minute of the look: ours. */
    private static final Duration EITHER_WAY = Duration.ofMinutes(15);

    private final Channel channel;
    private final Readings good;
    private final Corrections corrections;
    private final Surroundings surroundings;

    HandPairs(Channel channel, Readings good, Corrections corrections, Surroundings surroundings) {
        this.channel = channel;
        this.good = good;
        this.corrections = corrections;
        this.surroundings = surroundings;
    }

    /** In time order. */
    List<ByHand> of(List<HandRead> notes) {
        var pairs = new ArrayList<ByHand>();
        for (var note : notes) {
            var hand = hand(note);
            var around = good.between(
                    note.at().minus(EITHER_WAY).toEpochMilli(),
                    note.at().plus(EITHER_WAY).toEpochMilli());
            if (hand.isPresent() && !around.isEmpty()) {
                double read = middle(around);
                pairs.add(new ByHand(
                        note.at(),
                        read,
                        channel.unit().standard(read) + corrections.at(note.at()),
                        hand.getAsDouble()));
            }
        }
        pairs.sort(Comparator.comparing(ByHand::at));
        return pairs;
    }

    private static double middle(Readings around) {
        var values = new double[around.count()];
        for (int i = 0; i < values.length; i++) {
            values[i] = around.value(i);
        }
        Arrays.sort(values);
        return values[values.length / 2];
    }

    private OptionalDouble hand(HandRead note) {
        var dry = note.dry();
        var wet = note.wet();
        var humidity = note.humidity();
        return switch (channel.quantity()) {
            case AIR_TEMPERATURE -> dry == null ? OptionalDouble.empty() : OptionalDouble.of(dry.celsius());
            case WET_BULB -> wet == null ? OptionalDouble.empty() : OptionalDouble.of(wet.celsius());
            case HUMIDITY ->
                humidity != null
                        ? OptionalDouble.of(humidity.pct())
                        : dry == null || wet == null ? OptionalDouble.empty() : ofBulbs(dry, wet);
            // Nobody notes these on a round.
            case EGG_TEMPERATURE, PRESSURE -> OptionalDouble.empty();
        };
    }

    /** Empty where the pair cannot be. */
    private OptionalDouble ofBulbs(Temperature dry, Temperature wet) {
        try {
            Humidity humidity = MoistAir.ofWetBulb(dry, wet, surroundings.barometer(), surroundings.ventilation())
                    .humidity();
            return OptionalDouble.of(humidity.pct());
        } catch (OutOfRange impossible) {
            return OptionalDouble.empty();
        }
    }
}
