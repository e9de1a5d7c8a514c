package eggwright.desk.picture;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The season by week: a bar a set, from the day it was set to the day it hatches, and today as a line.
 *
 * @param from first day drawn; the drawing begins on the Monday before it
 * @param to last day drawn
 * @param today where it falls in the season; empty where it does not
 * @param language of the months' names
 */
public record SeasonChart(
        String id,
        String title,
        String says,
        LocalDate from,
        LocalDate to,
        Optional<Today> today,
        List<Bar> bars,
        Locale language,
        Numbers numbers)
        implements Picture {
    private static final int TOP_PX = 46;
    private static final int ROW_PX = 42;
    private static final int BAR_PX = 14;
    /** The narrowest screen's picture, and a sign of its type there: a label begins where it can end on the page. */
    private static final double NARROWEST_PX = 312;

    private static final double SIGN_PX = 7.2;

    /** A day with its word. */
    public record Today(LocalDate day, String word) {}

    /** A set on its way. */
    public record Bar(String label, LocalDate setOn, LocalDate hatchOn, State state) {
        public Bar {
            if (hatchOn.isBefore(setOn)) {
                throw new IllegalArgumentException(label + " hatches before it is set");
            }
        }
    }

    /** How far a set is: filled, part filled, or dashed. */
    public enum State {
        HATCHED,
        UNDER_WAY,
        PLANNED
    }

    public SeasonChart {
        bars = List.copyOf(bars);
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("A season from " + from + " to " + to);
        }
    }

    @Override
    public String svg() {
        var bottom = TOP_PX + ROW_PX * bars.size() + 4;
        var svg = Svg.of(this, bottom + 4, "room");
        for (var week = monday(); !week.isAfter(to); week = week.plusWeeks(1)) {
            svg.line(at(week), TOP_PX, at(week), bottom, "rule");
        }
        svg.line(0, TOP_PX, 100, TOP_PX, "axis");
        today.ifPresent(t -> {
            var x = at(t.day());
            svg.line(x, 20, x, bottom, "today");
            svg.text(x, 14, 0, "today-word " + (x > 85 ? "end" : x < 15 ? "start" : "mid"), t.word());
        });
        for (var month = firstMonth(); !month.isAfter(to); month = month.plusMonths(1)) {
            svg.line(at(month), TOP_PX - 16.0, at(month), TOP_PX, "axis");
            if (at(month) < 94) {
                var name = month.getMonth().getDisplayName(TextStyle.SHORT_STANDALONE, language);
                svg.text(at(month), TOP_PX - 6.0, 4, "soft over", name);
            }
        }
        for (var i = 0; i < bars.size(); i++) {
            draw(svg, bars.get(i), TOP_PX + ROW_PX * i + 4.0);
        }
        return svg.end();
    }

    private void draw(Svg svg, Bar bar, double y) {
        var start = at(bar.setOn());
        var end = at(bar.hatchOn());
        var top = y + 18;
        svg.add("<g class=\"" + (bar.state() == State.PLANNED ? "grey" : "olive") + "\">");
        switch (bar.state()) {
            case HATCHED -> svg.rect(start, top, end - start, BAR_PX, "class=\"fill\"");
            case UNDER_WAY -> {
                var now = today.map(t -> Math.clamp(at(t.day()), start, end)).orElse(start);
                svg.rect(start, top, end - start, BAR_PX, "class=\"paper-line\"");
                svg.rect(start, top, now - start, BAR_PX, "class=\"fill\"");
            }
            case PLANNED -> svg.rect(start, top, end - start, BAR_PX, "class=\"paper-line dashed\"");
        }
        svg.add("</g>");
        var width = bar.label().length() * SIGN_PX;
        if (width <= (100 - start) / 100 * NARROWEST_PX) {
            svg.text(start, y + 12, 0, "over", bar.label());
        } else {
            svg.text(width <= end / 100 * NARROWEST_PX ? end : 100, y + 12, 0, "over end", bar.label());
        }
    }

    private LocalDate monday() {
        return from.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    private LocalDate firstMonth() {
        var first = monday().withDayOfMonth(1);
        return first.isBefore(monday()) ? first.plusMonths(1) : first;
    }

    private double at(LocalDate day) {
        var whole = ChronoUnit.DAYS.between(monday(), to) + 1.0;
        return Math.clamp(100 * ChronoUnit.DAYS.between(monday(), day) / whole, 0, 100);
    }
}
