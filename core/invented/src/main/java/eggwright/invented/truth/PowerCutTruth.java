package eggwright.invented.truth;

import java.time.LocalTime;

/**
 * A power cut that chills every machine.
 *
 * @param day days after the first egg of the season
 * @param at local hour at which it began
 * @param hours how long
 * @param earlyPctPerHour share of the embryos of the early days that die of each hour
 * @param midPctPerHour the same in the middle
 * @param latePctPerHour the same from then to the hatch
 */
public record PowerCutTruth(
        int day, LocalTime at, double hours, double earlyPctPerHour, double midPctPerHour, double latePctPerHour) {
    public static final PowerCutTruth PLAIN = new PowerCutTruth(50, LocalTime.of(1, 30), 10, 0.3, 0.8, 2);

    public PowerCutTruth {
        Within.range("day", day, 0, 365);
        Within.range("hours", hours, 0, 240);
        Within.pct("early_pct_per_hour", earlyPctPerHour);
        Within.pct("mid_pct_per_hour", midPctPerHour);
        Within.pct("late_pct_per_hour", latePctPerHour);
    }
}
