package eggwright.desk.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What eggs lost since the set, day by day: what the scale said as marks, the way so far and ahead as a line with its range,
 * and where they should land.
 *
 * @param lastDay at the right edge
 * @param scale percent up the side
 * @param weighed what the scale said
 * @param way from the set to the last point ahead, in order of days
 * @param nowDay up to here the way is behind
 * @param band where they should land, by a day
 * @param words of the key
 */
public record LossChart(
        String id,
        String title,
        String says,
        double lastDay,
        ClimateChart.Scale scale,
        List<At> weighed,
        List<At> way,
        double nowDay,
        Band band,
        KeyWords words,
        Numbers numbers)
        implements Picture {
    private static final int TOP_PX = 12;
    private static final int PLOT_PX = 180;
    /** Labels of days, no closer than that. */
    private static final int DAYS_STEP = 7;

    /** A loss on a day, in percent. */
    public record At(double day, double low, double likely, double high) {}

    /** Where they should land. */
    public record Band(double day, double low, double high, String label) {}

    /** What the key says, and the word beside a day. */
    public record KeyWords(String weighed, String way, String now, String day) {}

    public LossChart {
        weighed = List.copyOf(weighed);
        way = List.copyOf(way);
    }

    @Override
    public String svg() {
        var bottom = TOP_PX + PLOT_PX;
        var svg = Svg.of(this, bottom + 26, "room-left");
        int steps = (int) Math.round((scale.high() - scale.low()) / scale.step());
        for (int i = 0; i <= steps; i++) {
            double value = scale.low() + i * scale.step();
            svg.line(0, y(value), 100, y(value), i == 0 ? "axis" : "rule");
            svg.text(0, y(value) + 5, -8, "soft end", String.format(Locale.ROOT, "%." + scale.decimals() + "f", value));
        }
        for (int day = 0; day <= lastDay; day += DAYS_STEP) {
            svg.line(x(day), bottom, x(day), bottom + 5.0, "axis");
            svg.text(x(day), bottom + 20.0, 0, day == 0 ? "soft" : "soft mid", words.day() + " " + day);
        }
        svg.add("<svg y=\"" + TOP_PX + "\" width=\"100%\" height=\"" + PLOT_PX + "\" viewBox=\"0 0 100 " + PLOT_PX
                + "\" preserveAspectRatio=\"none\">");
        svg.add("<polygon class=\"working\" points=\"0," + PLOT_PX + " " + corner(band.day(), band.high()) + " "
                + corner(band.day(), band.low()) + "\"/>");
        range(svg, way);
        course(svg, way.stream().filter(at -> at.day() <= nowDay).toList(), "course");
        course(svg, way.stream().filter(at -> at.day() >= nowDay).toList(), "course dashed");
        svg.add("</svg>");
        svg.line(x(band.day()), y(band.high()), x(band.day()), y(band.low()), "aimed");
        for (var at : weighed) {
            svg.line(x(at.day()), y(at.high()), x(at.day()), y(at.low()), "edge");
            svg.add("<circle class=\"by-hand\" cx=\"" + Svg.pct(x(at.day())) + "\" cy=\"" + Svg.px(y(at.likely()))
                    + "\" r=\"4.5\"/>");
        }
        svg.line(x(nowDay), TOP_PX, x(nowDay), bottom, "today");
        var side = x(nowDay) > 85 ? "end" : "start";
        svg.text(x(nowDay), TOP_PX + 12.0, side.equals("end") ? -6 : 6, "today-word over " + side, words.now());
        return svg.end();
    }

    private void range(Svg svg, List<At> all) {
        var corners = new ArrayList<String>();
        all.forEach(at -> corners.add(corner(at.day(), at.high())));
        all.reversed().forEach(at -> corners.add(corner(at.day(), at.low())));
        svg.add("<polygon class=\"band-near\" points=\"" + String.join(" ", corners) + "\"/>");
    }

    private void course(Svg svg, List<At> all, String style) {
        svg.add("<polyline class=\"" + style + "\" points=\""
                + String.join(
                        " ",
                        all.stream().map(at -> corner(at.day(), at.likely())).toList())
                + "\"/>");
    }

    private String corner(double day, double value) {
        return Svg.px(x(day)) + "," + Svg.px(y(value) - TOP_PX);
    }

    private double x(double day) {
        return Math.clamp(100 * day / lastDay, 0, 100);
    }

    private double y(double value) {
        return TOP_PX + PLOT_PX * (1 - scale.share(value));
    }

    @Override
    public List<Key> key() {
        return List.of(
                new Key(
                        swatch("<line class=\"edge\" x1=\"12\" y1=\"0\" x2=\"12\" y2=\"16\"/>"
                                + "<circle class=\"by-hand\" cx=\"12\" cy=\"8\" r=\"4.5\"/>"),
                        words.weighed(),
                        ""),
                new Key(
                        swatch("<rect class=\"band-near\" y=\"3\" width=\"24\" height=\"10\"/>"
                                + "<line class=\"course dashed\" x1=\"0\" y1=\"8\" x2=\"24\" y2=\"8\"/>"),
                        words.way(),
                        ""),
                new Key(
                        swatch("<rect class=\"working\" y=\"2\" width=\"24\" height=\"12\"/>"
                                + "<line class=\"aimed\" x1=\"22\" y1=\"2\" x2=\"22\" y2=\"14\"/>"),
                        band.label(),
                        ""));
    }

    private static String swatch(String drawing) {
        return "<svg width=\"24\" height=\"16\" aria-hidden=\"true\">" + drawing + "</svg>";
    }
}
