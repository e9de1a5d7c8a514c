package eggwright.intake.message;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.Readings;
import eggwright.climate.sensor.Sifting;
import eggwright.climate.sensor.Sound;
import java.util.List;

/**
 * How many readings of a message are held back. Only what lies shortly before each is read for it: a message may hold one
 * reading of years ago and one of now, with a whole history between them.
 */
final class HeldBack {
    /** What a reading is judged by. */
    private static final long BEFORE_MILLIS = 6 * Sound.JUMP_MILLIS;

    private HeldBack() {}

    /** Of those that were told, after they were kept; what was there before of other instants is not counted. */
    static long count(ReadingStore readings, Channel channel, Readings told) {
        long held = 0;
        for (int from = 0; from < told.count(); ) {
            int to = endOfStretch(told, from);
            held += inStretch(readings, channel, told, from, to);
            from = to;
        }
        return held;
    }

    /** After the last of those that follow each other so closely that they are judged by each other. */
    private static int endOfStretch(Readings told, int from) {
        int to = from + 1;
        while (to < told.count() && told.millis(to) - told.millis(to - 1) <= BEFORE_MILLIS) {
            to++;
        }
        return to;
    }

    private static long inStretch(ReadingStore readings, Channel channel, Readings told, int from, int to) {
        var around = readings.between(
                channel,
                told.at(from).minusMillis(BEFORE_MILLIS),
                told.at(to - 1).plusMillis(1));
        return Sifting.of(channel, around, List.of()).held().stream()
                .filter(held -> isTold(told, held.at().toEpochMilli()))
                .count();
    }

    private static boolean isTold(Readings told, long millis) {
        int index = told.firstAt(millis);
        return index < told.count() && told.millis(index) == millis;
    }
}
