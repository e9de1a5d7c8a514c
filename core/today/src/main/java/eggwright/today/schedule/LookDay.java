package eggwright.today.schedule;

import java.time.ZonedDateTime;

/**
 * A day on which trays are candled by custom.
 *
 * @param day of incubation
 * @param at that day at the farm's hour for work at the lamp
 * @param firstDay first day on which a look counts for this one
 * @param lastDay last day on which a look counts for this one; until then it is still possible
 */
public record LookDay(int day, ZonedDateTime at, int firstDay, int lastDay) {}
