package eggwright.desk.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What thermometers or hygrometers read over some time: the middle of each stretch as a line, its least and greatest as a
 * band about it, what was read by hand as marks, silence as a bar at the foot where the line is broken.
 *
 * @param scale values up the side
 * @param ticks times along the foot
 * @param guides what it should be at, behind all
 * @param lines one for each sensor
 * @param marks read by hand
 * @param silences when a sensor said nothing
 * @param words of the key
 */
public record ClimateChart(
        String id,
        String title,
        String says,
        Scale scale,
        List<Tick> ticks,
        List<Guide> guides,
        List<Line> lines,
        List<Mark> marks,
        List<Silence> silences,
        KeyWords words,
        Numbers numbers)
        implements Picture {
    private static final int TOP_PX = 12;
    private static final int PLOT_PX = 200;
    private static final int FOOT_PX = 6;
    /** Then they are dots, so that the line is seen between them. */
    private static final int MANY_MARKS = 40;
    /** A label at the very edge would meet its neighbour, or the edge of a phone. */
    private static final double LABEL_FROM_PCT = 6;

    private static final double LABEL_TO_PCT = 94;

    /**
     * Values in even steps.
     *
     * @param low at the foot
     * @param high at the top
     */
    public record Scale(double low, double high, double step, int decimals) {
        private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100};
        private static final int MOST_STEPS = 6;
        /** What a division may leave over. */
        private static final double ROUNDING = 1e-9;

        public Scale {
            if (!(low < high && step > 0)) {
                throw new IllegalArgumentException("A scale from " + low + " to " + high + " in steps of " + step);
            }
        }

        /** One that holds these values. */
        public static Scale over(double least, double greatest) {
            double room = Math.max(greatest - least, 4 * STEPS[0]);
            double step = STEPS[STEPS.length - 1];
            for (int i = STEPS.length - 1; i >= 0 && room / STEPS[i] <= MOST_STEPS; i--) {
                step = STEPS[i];
            }
            double low = tenth(step * Math.floor(least / step + ROUNDING));
            double high = tenth(step * Math.ceil(greatest / step - ROUNDING));
            return new Scale(low, high > low ? high : tenth(low + step), step, step < 1 ? 1 : 0);
        }

        private static double tenth(double value) {
            return Math.rint(10 * value) / 10;
        }

        double share(double value) {
            return (Math.clamp(value, low, high) - low) / (high - low);
        }
    }

    /** A time along the foot; its label may be empty. */
    public record Tick(double pct, String label) {}

    /** What it should be at: a band, or a line where both ends are one. */
    public record Guide(double low, double high, String label) {}

    /** What one sensor said, in stretches without silence. */
    public record Line(String label, List<List<Stretch>> runs) {
        public Line {
            runs = runs.stream().map(List::copyOf).toList();
        }
    }

    /** One stretch of time. */
    public record Stretch(double fromPct, double toPct, double least, double middle, double greatest) {
        double centre() {
            return (fromPct + toPct) / 2;
        }
    }

    /** A reading by hand. */
    public record Mark(double pct, double value) {}

    /** Nothing was read. */
    public record Silence(double fromPct, double toPct) {}

    /** What the key says of marks and silences. */
    public record KeyWords(String byHand, String silent) {}

    public ClimateChart {
        ticks = List.copyOf(ticks);
        guides = List.copyOf(guides);
        lines = List.copyOf(lines);
        marks = List.copyOf(marks);
        silences = List.copyOf(silences);
    }

    @Override
    public String svg() {
        var bottom = TOP_PX + PLOT_PX;
        var svg = Svg.of(this, bottom + 26, "room-left");
        for (var guide : guides) {
            svg.rect(0, y(guide.high()), 100, Math.max(0, y(guide.low()) - y(guide.high())), "class=\"working\"");
            svg.line(0, y(guide.low()), 100, y(guide.low()), "working-edge");
            if (guide.high() > guide.low()) {
                svg.line(0, y(guide.high()), 100, y(guide.high()), "working-edge");
            }
        }
        int steps = (int) Math.round((scale.high() - scale.low()) / scale.step());
        for (int i = 0; i <= steps; i++) {
            double value = scale.low() + i * scale.step();
            svg.line(0, y(value), 100, y(value), i == 0 ? "axis" : "rule");
            svg.text(0, y(value) + 5, -8, "soft end", String.format(Locale.ROOT, "%." + scale.decimals() + "f", value));
        }
        for (var tick : ticks) {
            svg.line(tick.pct(), bottom, tick.pct(), bottom + 5.0, "axis");
            if (!tick.label().isEmpty() && tick.pct() >= LABEL_FROM_PCT && tick.pct() <= LABEL_TO_PCT) {
                svg.text(tick.pct(), bottom + 20.0, 0, "soft mid", tick.label());
            }
        }
        silences.forEach(s ->
                svg.rect(s.fromPct(), bottom - (double) FOOT_PX, s.toPct() - s.fromPct(), FOOT_PX, "class=\"silent\""));
        svg.add("<svg y=\"" + TOP_PX + "\" width=\"100%\" height=\"" + PLOT_PX + "\" viewBox=\"0 0 100 " + PLOT_PX
                + "\" preserveAspectRatio=\"none\">");
        for (int i = 0; i < lines.size(); i++) {
            for (var run : lines.get(i).runs()) {
                draw(svg, run, style(i));
            }
        }
        svg.add("</svg>");
        var size = marks.size() > MANY_MARKS ? 1.2 : 4.5;
        marks.forEach(m -> svg.add("<circle class=\"by-hand\" cx=\"" + Svg.pct(m.pct()) + "\" cy=\""
                + Svg.px(y(m.value())) + "\" r=\"" + Svg.px(size) + "\"/>"));
        return svg.end();
    }

    /** One run: its band, and its middle from edge to edge. */
    private void draw(Svg svg, List<Stretch> run, String style) {
        var first = run.getFirst();
        var last = run.getLast();
        var above = new ArrayList<String>();
        var below = new ArrayList<String>();
        var middle = new ArrayList<String>();
        above.add(corner(first.fromPct(), first.greatest()));
        below.add(corner(first.fromPct(), first.least()));
        middle.add(corner(first.fromPct(), first.middle()));
        for (var stretch : run) {
            above.add(corner(stretch.centre(), stretch.greatest()));
            below.add(corner(stretch.centre(), stretch.least()));
            middle.add(corner(stretch.centre(), stretch.middle()));
        }
        above.add(corner(last.toPct(), last.greatest()));
        below.add(corner(last.toPct(), last.least()));
        middle.add(corner(last.toPct(), last.middle()));
        above.addAll(below.reversed());
        svg.add("<polygon class=\"band-near\" points=\"" + String.join(" ", above) + "\"/>");
        svg.add("<polyline class=\"" + style + "\" points=\"" + String.join(" ", middle) + "\"/>");
    }

    private static String style(int line) {
        return switch (line % 3) {
            case 0 -> "course";
            case 1 -> "course dashed";
            default -> "course dotted";
        };
    }

    private String corner(double pct, double value) {
        return Svg.px(pct) + "," + Svg.px(y(value) - TOP_PX);
    }

    private double y(double value) {
        return TOP_PX + PLOT_PX * (1 - scale.share(value));
    }

    @Override
    public List<Key> key() {
        var key = new ArrayList<Key>();
        for (int i = 0; i < lines.size(); i++) {
            key.add(new Key(
                    swatch("<rect class=\"band-near\" y=\"3\" width=\"24\" height=\"10\"/><line class=\"" + style(i)
                            + "\" x1=\"0\" y1=\"8\" x2=\"24\" y2=\"8\"/>"),
                    lines.get(i).label(),
                    ""));
        }
        if (!marks.isEmpty()) {
            key.add(new Key(swatch("<circle class=\"by-hand\" cx=\"12\" cy=\"8\" r=\"4.5\"/>"), words.byHand(), ""));
        }
        for (var guide : guides) {
            key.add(new Key(
                    swatch(
                            "<rect class=\"working\" y=\"2\" width=\"24\" height=\"12\"/><line class=\"working-edge\" x1=\"0\""
                                    + " y1=\"8\" x2=\"24\" y2=\"8\"/>"),
                    guide.label(),
                    ""));
        }
        if (!silences.isEmpty()) {
            key.add(new Key(swatch("<rect class=\"silent\" y=\"5\" width=\"24\" height=\"6\"/>"), words.silent(), ""));
        }
        return key;
    }

    private static String swatch(String drawing) {
        return "<svg width=\"24\" height=\"16\" aria-hidden=\"true\">" + drawing + "</svg>";
    }
}
