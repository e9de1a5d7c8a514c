package eggwright.climate.sensor;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Readings;
import eggwright.climate.reading.ReadingsGathered;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Holds back readings that no machine can have had. Nothing is dropped, and nothing is stored of it: what is held follows
 * from the readings and from what people released, every time anew.
 *
 * <p>Of two readings of one instant the nearer to the reading before stays. A jump is held back until
 * {@link Sound#BELIEVED_AFTER} readings in a row agree on the new place; then that place is believed, and what was held
 * stays held. After a gap longer than {@link Sound#JUMP_MILLIS} anything possible is taken. While a sensor is set aside all it
 * reads is held, and nothing is held against it.
 */
public final class Sifting {
    private final Channel channel;
    private final Sound sound;
    private final List<Released> released;
    private final List<Aside> aside;
    private final ReadingsGathered good = new ReadingsGathered();
    private final List<Held> held = new ArrayList<>();
    private boolean hasLast;
    private long lastMillis;
    private double lastValue;
    private int agreeing;
    private double agreedValue;

    private Sifting(Channel channel, List<Released> released, List<Aside> aside) {
        this.channel = channel;
        this.sound = Sound.of(channel.quantity());
        this.released = released;
        this.aside = aside;
    }

    /** Of a sensor that was never set aside. */
    public static Sifted of(Channel channel, Readings readings, List<Released> released) {
        return of(channel, readings, released, List.of());
    }

    public static Sifted of(Channel channel, Readings readings, List<Released> released, List<Aside> aside) {
        if (aside.isEmpty() && isSound(channel, readings)) {
            return new Sifted(readings, List.of());
        }
        var sifting = new Sifting(channel, released, aside);
        for (int i = 0; i < readings.count(); ) {
            i = sifting.instant(readings, i);
        }
        return new Sifted(sifting.good.take(), sifting.held);
    }

    /** Most are: then there is nothing to tell apart, and no second copy of a season. */
    private static boolean isSound(Channel channel, Readings readings) {
        var sound = Sound.of(channel.quantity());
        for (int i = 0; i < readings.count(); i++) {
            double standard = channel.unit().standard(readings.value(i));
            if (!(standard >= sound.least() && standard <= sound.most())) {
                return false;
            }
            if (i > 0) {
                long step = readings.millis(i) - readings.millis(i - 1);
                double change = channel.unit().standardDifference(readings.value(i) - readings.value(i - 1));
                if (step == 0 || (step <= Sound.JUMP_MILLIS && Math.abs(change) > sound.jump())) {
                    return false;
                }
            }
        }
        return true;
    }

    /** All readings of one instant. */
    private int instant(Readings readings, int from) {
        int to = from + 1;
        while (to < readings.count() && readings.millis(to) == readings.millis(from)) {
            to++;
        }
        if (isAside(readings.millis(from))) {
            for (int i = from; i < to; i++) {
                held.add(new Held(readings.at(i), readings.value(i), Doubt.SET_ASIDE));
            }
            return to;
        }
        int nearest = from;
        for (int i = from + 1; i < to; i++) {
            if (hasLast && away(readings.value(i)) < away(readings.value(nearest))) {
                nearest = i;
            }
        }
        for (int i = from; i < to; i++) {
            if (i != nearest) {
                judge(readings.millis(i), readings.value(i), Doubt.SAME_INSTANT);
            }
        }
        one(readings.millis(nearest), readings.value(nearest));
        return to;
    }

    private void one(long millis, double value) {
        double standard = channel.unit().standard(value);
        if (!(standard >= sound.least() && standard <= sound.most())) {
            judge(millis, value, Doubt.IMPOSSIBLE);
        } else if (hasLast
                && millis - lastMillis <= Sound.JUMP_MILLIS
                && away(value) > sound.jump()
                && !isBelieved(value)) {
            judge(millis, value, Doubt.JUMP);
        } else {
            take(millis, value);
        }
    }

    /** Whether enough readings in a row stand at the new place. */
    private boolean isBelieved(double value) {
        boolean agrees = agreeing > 0 && distance(value, agreedValue) <= sound.jump() / 4;
        agreeing = agrees ? agreeing + 1 : 1;
        agreedValue = value;
        return agreeing >= Sound.BELIEVED_AFTER;
    }

    private void take(long millis, double value) {
        good.add(millis, value);
        hasLast = true;
        lastMillis = millis;
        lastValue = value;
        agreeing = 0;
    }

    private void judge(long millis, double value, Doubt why) {
        if (released.stream().anyMatch(r -> r.covers(millis))) {
            good.add(millis, value);
        } else {
            held.add(new Held(Instant.ofEpochMilli(millis), value, why));
        }
    }

    private boolean isAside(long millis) {
        for (var one : aside) {
            if (one.covers(millis)) {
                return true;
            }
        }
        return false;
    }

    private double away(double value) {
        return distance(value, lastValue);
    }

    private double distance(double a, double b) {
        return Math.abs(channel.unit().standardDifference(a - b));
    }
}
