package eggwright.intake.file;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.rollup.Gaps;
import eggwright.climate.sensor.Held;
import eggwright.climate.sensor.Sifting;
import eggwright.climate.sensor.Sound;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * What is odd among readings that were just taken: those that are held back, and silences. Told a month at a time, so that
 * a file of many years needs no more memory than a month.
 */
final class Oddities {
    private static final Duration STRETCH = Duration.ofDays(30);
    /** What a reading is judged by. */
    private static final Duration BEFORE = Duration.ofMillis(6 * Sound.JUMP_MILLIS);

    private final ReadingStore readings;
    private final List<TakenFile.HeldBack> firstHeld = new ArrayList<>();
    private long held;
    private long gaps;

    private Oddities(ReadingStore readings) {
        this.readings = readings;
    }

    /** From the first instant up to the last, which is among them. */
    static Oddities of(ReadingStore readings, List<Channel> channels, Instant first, Instant last) {
        var oddities = new Oddities(readings);
        channels.forEach(channel -> oddities.look(channel, first, last.plusMillis(1)));
        return oddities;
    }

    long held() {
        return held;
    }

    long gaps() {
        return gaps;
    }

    /** The first of those that are held back. */
    List<TakenFile.HeldBack> firstHeld() {
        return List.copyOf(firstHeld);
    }

    private void look(Channel channel, Instant first, Instant end) {
        var longest = Gaps.SHORTEST.toMillis();
        long before = Long.MIN_VALUE;
        for (var from = first; from.isBefore(end); from = from.plus(STRETCH)) {
            var to = from.plus(STRETCH).isBefore(end) ? from.plus(STRETCH) : end;
            var read = readings.between(channel, from.minus(BEFORE), to);
            for (var one : Sifting.of(channel, read, List.of()).held()) {
                if (!one.at().isBefore(from)) {
                    hold(channel, one);
                }
            }
            var own = read.between(from.toEpochMilli(), to.toEpochMilli());
            longest = own.count() > 1 ? Gaps.longestStep(own).toMillis() : longest;
            for (int i = 0; i < own.count(); i++) {
                gaps += before != Long.MIN_VALUE && own.millis(i) - before > longest ? 1 : 0;
                before = own.millis(i);
            }
        }
    }

    private void hold(Channel channel, Held one) {
        held++;
        if (firstHeld.size() < TakenFile.MOST_HELD_SHOWN) {
            firstHeld.add(new TakenFile.HeldBack(channel, one));
        }
    }
}
