package eggwright.desk.machine;

import eggwright.desk.words.Words;
import java.time.Duration;

/** How long something lasted, as a person says it. */
final class Lengths {
    private static final int HOURS_PER_DAY = 24;

    private Lengths() {}

    static String say(Duration length, Words words) {
        long minutes = Math.max(1, Math.round(length.toSeconds() / 60.0));
        if (minutes < 60) {
            return words.say("length.minutes", minutes);
        }
        if (minutes < 48L * 60) {
            return minutes % 60 == 0
                    ? words.say("length.hours", minutes / 60)
                    : words.say("length.hoursMinutes", minutes / 60, minutes % 60);
        }
        long hours = Math.round(minutes / 60.0);
        return hours % HOURS_PER_DAY == 0
                ? words.say("length.days", hours / HOURS_PER_DAY)
                : words.say("length.daysHours", hours / HOURS_PER_DAY, hours % HOURS_PER_DAY);
    }
}
