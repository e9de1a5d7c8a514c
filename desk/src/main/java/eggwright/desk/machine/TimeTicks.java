package eggwright.desk.machine;

import eggwright.desk.picture.ClimateChart.Tick;
import eggwright.desk.words.Days;
import java.time.DayOfWeek;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Times along the foot of a chart, on the farm's own clock; few enough labels for a phone. */
final class TimeTicks {
    private static final int HOURS_BETWEEN = 4;
    /** Up to about so many days every Monday has its label. */
    private static final int DAYS_LABELLED_SINGLY = 28;

    private final Window window;
    private final ZoneId zone;
    private final Days days;

    TimeTicks(Window window, ZoneId zone, Locale language) {
        this.window = window;
        this.zone = zone;
        this.days = Days.in(language);
    }

    List<Tick> all() {
        return switch (window.span()) {
            case DAY -> hours();
            case WEEK -> daysOf();
            case MONTH, SEASON -> weeks();
        };
    }

    private List<Tick> hours() {
        var ticks = new ArrayList<Tick>();
        var at = window.from().atZone(zone).truncatedTo(ChronoUnit.HOURS);
        for (; !at.toInstant().isAfter(window.to()); at = at.plusHours(1)) {
            if (!at.toInstant().isBefore(window.from()) && at.getHour() % HOURS_BETWEEN == 0) {
                ticks.add(tick(at, days.hour(at)));
            }
        }
        return ticks;
    }

    private List<Tick> daysOf() {
        var ticks = new ArrayList<Tick>();
        for (var at = midnight(); !at.toInstant().isAfter(window.to()); at = at.plusDays(1)) {
            ticks.add(tick(at, ticks.size() % 2 == 0 ? days.shortDay(at) : ""));
        }
        return ticks;
    }

    /** Mondays; labelled so that some four stand side by side. */
    private List<Tick> weeks() {
        var ticks = new ArrayList<Tick>();
        long length = ChronoUnit.DAYS.between(window.from(), window.to());
        long every = Math.max(1, Math.ceilDiv(length - 2, DAYS_LABELLED_SINGLY));
        for (var at = midnight(); !at.toInstant().isAfter(window.to()); at = at.plusDays(1)) {
            if (at.getDayOfWeek() == DayOfWeek.MONDAY) {
                ticks.add(tick(at, ticks.size() % every == 0 ? days.shortDay(at) : ""));
            }
        }
        return ticks;
    }

    private ZonedDateTime midnight() {
        return window.from().atZone(zone).toLocalDate().plusDays(1).atStartOfDay(zone);
    }

    private Tick tick(ZonedDateTime at, String label) {
        return new Tick(window.pct(at.toInstant()), label);
    }
}
