package eggwright.desk.picture;

import java.util.List;
import java.util.Optional;

/**
 * Rates side by side: a mark and its interval on one scale, the farm's own normal as a band behind, what was counted at
 * the right. The page sorts the rows by what matters.
 *
 * @param scale percent at the two ends
 * @param normal the farm's own; empty where it has none yet
 */
public record IntervalPlot(
        String id, String title, String says, Scale scale, Optional<Band> normal, List<Row> rows, Numbers numbers)
        implements Picture {
    private static final int TOP_PX = 26;
    private static final int ROW_PX = 70;
    private static final int TICKS = 4;
    /** Signs on a line of the narrowest screen. */
    private static final int LINE_SIGNS = 44;

    /** Percent, 0 to 100, {@code low} below {@code high}. */
    public record Scale(double lowPct, double highPct) {
        public Scale {
            if (!(lowPct >= 0 && lowPct < highPct && highPct <= 100)) {
                throw new IllegalArgumentException("A scale from " + lowPct + " to " + highPct + " percent");
            }
        }

        /**
         * A scale that holds these percents, cut into even steps: up to 100, or from 0 where all are far below.
         */
        public static Scale over(List<Double> pcts) {
            double least = pcts.stream().mapToDouble(Double::doubleValue).min().orElse(0);
            double most = pcts.stream().mapToDouble(Double::doubleValue).max().orElse(100);
            if (most <= 60) {
                return new Scale(0, most <= 4 ? 4 : most <= 8 ? 8 : Math.ceil(most / 20) * 20);
            }
            return new Scale(Math.floor(Math.min(least, 80) / 20) * 20, 100);
        }

        boolean holds(double pct) {
            return pct >= lowPct && pct <= highPct;
        }

        double at(double pct) {
            return 100 * (Math.clamp(pct, lowPct, highPct) - lowPct) / (highPct - lowPct);
        }
    }

    /** A range with its words, as "this farm's usual". */
    public record Band(String label, double lowPct, double highPct) {}

    /**
     * @param counted as "51 of 54, 94 % (85 to 98)"
     * @param note under the mark, what is to be thought of it; empty where there is nothing to say
     * @param standing what the mark says; the note says it too
     */
    public record Row(
            String label, String counted, String note, double pct, double lowPct, double highPct, Standing standing) {}

    /** Against the farm's own normal. */
    public enum Standing {
        USUAL,
        BELOW,
        ABOVE,
        TOO_FEW
    }

    public IntervalPlot {
        rows = List.copyOf(rows);
    }

    @Override
    public String svg() {
        var bottom = TOP_PX + ROW_PX * rows.size();
        var svg = Svg.of(this, bottom + 24, "room");
        normal.ifPresent(band -> {
            var from = scale.at(band.lowPct());
            var to = scale.at(band.highPct());
            for (var i = 0; i < rows.size(); i++) {
                svg.rect(from, TOP_PX + ROW_PX * i + 25.0, to - from, 22, "class=\"band\"");
            }
            var middle = (from + to) / 2;
            var anchor = middle > 66 ? "end" : middle < 34 ? "start" : "mid";
            svg.text(middle > 66 ? to : middle < 34 ? from : middle, TOP_PX - 8, 0, "soft " + anchor, band.label());
        });
        for (var i = 0; i <= TICKS; i++) {
            var pct = scale.lowPct() + (scale.highPct() - scale.lowPct()) * i / TICKS;
            var x = scale.at(pct);
            svg.line(x, bottom, x, bottom + 5.0, "axis");
            var anchor = i == 0 ? "start" : i == TICKS ? "end" : "mid";
            svg.text(x, bottom + 20.0, 0, "soft " + anchor, Svg.px((double) Math.round(pct)) + "\u00a0%");
        }
        svg.line(0, bottom, 100, bottom, "axis");
        for (var i = 0; i < rows.size(); i++) {
            draw(svg, rows.get(i), TOP_PX + ROW_PX * i);
        }
        return svg.end();
    }

    private void draw(Svg svg, Row row, int top) {
        var y = top + 36.0;
        var tone = switch (row.standing()) {
            case BELOW -> "blood";
            case ABOVE -> "olive";
            case USUAL -> "shell";
            case TOO_FEW -> "grey";
        };
        svg.add("<g class=\"" + tone + "\">");
        svg.text(0, top + 18.0, 0, row.standing() == Standing.BELOW ? "bold" : "", label(row));
        svg.text(100, top + 18.0, 0, "end", row.counted());
        svg.line(scale.at(row.lowPct()), y, scale.at(row.highPct()), y, "line");
        for (var end : new double[] {row.lowPct(), row.highPct()}) {
            if (scale.holds(end)) { // an end outside is not drawn as if it were here
                svg.line(scale.at(end), y - 5, scale.at(end), y + 5, "line");
            }
        }
        svg.add("<svg class=\"mark-at\" x=\"" + Svg.pct(scale.at(row.pct())) + "\" y=\"" + Svg.px(y) + "\">"
                + shape(row.standing()) + "</svg>");
        svg.add("</g>");
        svg.text(0, top + 60.0, 0, row.standing() == Standing.USUAL ? "soft" : "", row.note());
        svg.line(0, top + (double) ROW_PX, 100, top + (double) ROW_PX, "rule");
    }

    /** Shortened where the narrowest screen has no room for it beside its count; whole in the numbers. */
    private static String label(Row row) {
        int room = Math.max(3, LINE_SIGNS - row.counted().length());
        return row.label().length() <= room ? row.label() : row.label().substring(0, room - 1) + "…";
    }

    private static String shape(Standing standing) {
        return switch (standing) {
            case USUAL -> "<circle class=\"fill\" r=\"6\"/>";
            case BELOW -> "<path class=\"fill\" d=\"M-8-7h16L0 8Z\"/>";
            case ABOVE -> "<path class=\"fill\" d=\"M-8 7h16L0-8Z\"/>";
            case TOO_FEW -> "<circle class=\"open\" r=\"5\"/>";
        };
    }
}
