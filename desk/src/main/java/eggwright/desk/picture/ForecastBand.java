package eggwright.desk.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Chicks to come, as they were foreseen day by day: a band that narrows, with the truth dropped in afterwards.
 *
 * @param points in the order of their days, two at least
 * @param truth what came; empty while nobody knows
 * @param dayLabel words under the days, as "day of the set"
 * @param chickLabel words over the scale, as "saleable chicks"
 */
public record ForecastBand(
        String id,
        String title,
        String says,
        List<Point> points,
        Optional<Truth> truth,
        String dayLabel,
        String chickLabel,
        Numbers numbers)
        implements Picture {
    private static final int TOP_PX = 30;
    private static final int PLOT_PX = 200;
    private static final int TICKS = 4;
    private static final int[] NICE_STEPS = {1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500};

    /**
     * What was foreseen on one day of the set.
     *
     * @param day from the set, 0 is the day it went in
     */
    public record Point(int day, double low95, double low80, double middle, double high80, double high95) {
        public Point {
            if (!(low95 <= low80 && low80 <= middle && middle <= high80 && high80 <= high95 && low95 >= 0)) {
                throw new IllegalArgumentException("The ranges of day " + day + " do not hold one another");
            }
        }
    }

    /** What came, on its day. */
    public record Truth(int day, long chicks, String label) {}

    public ForecastBand {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("A band needs two days, not " + points.size());
        }
    }

    @Override
    public String svg() {
        var bottom = TOP_PX + PLOT_PX;
        var svg = Svg.of(this, bottom + 44, "room-left");
        svg.text(0, 14, -40, "soft", chickLabel);
        for (var chicks = 0; chicks <= top(); chicks += step()) {
            svg.line(0, y(chicks), 100, y(chicks), chicks == 0 ? "axis" : "rule");
            svg.text(0, y(chicks) + 5, -8, "soft end", Integer.toString(chicks));
        }
        svg.add("<svg y=\"" + TOP_PX + "\" width=\"100%\" height=\"" + PLOT_PX
                + "\" viewBox=\"0 0 100 200\" preserveAspectRatio=\"none\">");
        svg.add(area("band-wide", Point::low95, Point::high95));
        svg.add(area("band-near", Point::low80, Point::high80));
        svg.add("</svg>");
        for (var i = 1; i < points.size(); i++) {
            var a = points.get(i - 1);
            var b = points.get(i);
            svg.line(x(a.day()), y(a.middle()), x(b.day()), y(b.middle()), "middle");
        }
        for (var point : points) {
            svg.line(x(point.day()), bottom, x(point.day()), bottom + 5.0, "axis");
            svg.text(x(point.day()), bottom + 20.0, 0, "soft mid", Integer.toString(point.day()));
        }
        svg.text(100, bottom + 40.0, 0, "soft end", dayLabel);
        truth.ifPresent(t -> {
            svg.add("<svg class=\"mark-at amber\" x=\"" + Svg.pct(x(t.day())) + "\" y=\""
                    + Svg.px(y((double) t.chicks())) + "\"><path class=\"fill\" d=\"M0-8 8 0 0 8-8 0Z\"/></svg>");
            svg.text(x(t.day()), y((double) t.chicks()) + 5, -14, "over bold end", t.label());
        });
        return svg.end();
    }

    private String area(String style, ToDoubleFunction<Point> low, ToDoubleFunction<Point> high) {
        var corners = new ArrayList<String>();
        points.forEach(p -> corners.add(corner(p, high)));
        points.reversed().forEach(p -> corners.add(corner(p, low)));
        return "<polygon class=\"" + style + "\" points=\"" + String.join(" ", corners) + "\"/>";
    }

    private String corner(Point point, ToDoubleFunction<Point> value) {
        return Svg.px(x(point.day())) + "," + Svg.px(y(value.applyAsDouble(point)) - TOP_PX);
    }

    private double x(int day) {
        var last = Math.max(
                points.getLast().day(),
                truth.map(Truth::day).orElse(points.getLast().day()));
        var first = points.getFirst().day();
        return 100.0 * (day - first) / Math.max(1, last - first);
    }

    private double y(double chicks) {
        return TOP_PX + PLOT_PX * (1 - chicks / top());
    }

    private int top() {
        return step() * (int) Math.ceil(highest() / step());
    }

    private double highest() {
        var foreseen = points.stream().mapToDouble(Point::high95).max().orElse(1);
        return Math.max(1, Math.max(foreseen, truth.map(Truth::chicks).orElse(0L)));
    }

    private int step() {
        for (var step : NICE_STEPS) {
            if (highest() / step <= TICKS) {
                return step;
            }
        }
        return (int) Math.ceil(highest() / TICKS / 1000) * 1000;
    }
}
