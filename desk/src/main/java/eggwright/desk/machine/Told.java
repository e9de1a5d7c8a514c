package eggwright.desk.machine;

import eggwright.climate.air.SensorCare;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.ReadingStore.Extent;
import eggwright.climate.rollup.Band;
import eggwright.climate.rollup.Cut;
import eggwright.climate.rollup.Gap;
import eggwright.climate.rollup.Gaps;
import eggwright.climate.rollup.Rollup;
import eggwright.climate.rollup.Rollups;
import eggwright.climate.sensor.Doubt;
import eggwright.climate.sensor.Held;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one sensor told in a window: in stretches to be drawn, in hours or days to be read, and what of it is in doubt.
 *
 * @param extent of all that it ever told
 * @param longestStep the longest silence that is none
 * @param band that the hours or days of the table were held against; empty for what has none
 * @param silences in the window, up to its edges where it was silent there
 */
record Told(
        Channel channel,
        Extent extent,
        Duration longestStep,
        List<Rollup> stretches,
        List<Rollup> table,
        Optional<Band> band,
        List<Held> held,
        List<Gap> silences) {
    Told {
        stretches = List.copyOf(stretches);
        table = List.copyOf(table);
        held = List.copyOf(held);
        silences = List.copyOf(silences);
    }

    static Told of(
            ReadingStore store,
            SensorCare care,
            Channel channel,
            Extent extent,
            Window window,
            ZoneId zone,
            Optional<Band> working) {
        var sifted = care.sifted(store, channel, window.from(), window.to());
        var good = sifted.good();
        var corrections = care.corrections(channel);
        var coarse = window.span() == Span.DAY ? Cut.HOUR : new Cut.Days(zone);
        var band = working.filter(b -> channel.quantity() == Quantity.AIR_TEMPERATURE);
        var longest = Gaps.longestStep(good);
        var silences = new ArrayList<Gap>();
        if (!good.isEmpty()) {
            if (extent.first().isBefore(window.from())) {
                silent(silences, window.from(), good.at(0), longest);
            }
            silences.addAll(Gaps.of(good));
            silent(silences, good.at(good.count() - 1), window.to(), longest);
            silences.removeIf(gap -> sifted.held().stream().anyMatch(h -> isAsideIn(h, gap)));
        }
        return new Told(
                channel,
                extent,
                longest,
                Rollups.of(
                        channel, good, corrections, new Cut.Every(window.span().stretch()), null),
                Rollups.of(channel, good, corrections, coarse, band.orElse(null)),
                band,
                sifted.held(),
                silences);
    }

    /** A sensor that is set aside is not silent. */
    private static boolean isAsideIn(Held held, Gap gap) {
        return held.why() == Doubt.SET_ASIDE
                && !held.at().isBefore(gap.from())
                && !held.at().isAfter(gap.to());
    }

    private static void silent(List<Gap> silences, Instant from, Instant to, Duration longest) {
        if (Duration.between(from, to).compareTo(longest) > 0) {
            silences.add(new Gap(from, to));
        }
    }
}
