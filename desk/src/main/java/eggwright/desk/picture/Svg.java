package eggwright.desk.picture;

import java.util.Locale;

/** Writes SVG. Lengths across are percent of the width, so that a picture fits any screen without shrinking its type. */
final class Svg {
    private final StringBuilder out = new StringBuilder(2048);

    /**
     * The outer element, named by its title for a screen reader.
     *
     * @param heightPx of the drawing
     * @param style class that gives it room at its sides
     */
    static Svg of(Picture picture, int heightPx, String style) {
        var svg = new Svg();
        var id = picture.id() + "-title";
        svg.add("<svg class=\"" + style + "\" height=\"" + heightPx + "\" role=\"img\" aria-labelledby=\"" + id
                + "\">");
        svg.add("<title id=\"" + id + "\">" + escaped(picture.title()) + "</title>");
        svg.add("<desc>" + escaped(picture.says()) + "</desc>");
        return svg;
    }

    Svg add(String markup) {
        out.append(markup).append('\n');
        return this;
    }

    Svg rect(double xPct, double yPx, double widthPct, double heightPx, String attributes) {
        return add("<rect x=\"" + pct(xPct) + "\" y=\"" + px(yPx) + "\" width=\"" + pct(widthPct) + "\" height=\""
                + px(heightPx) + "\" " + attributes + "/>");
    }

    Svg line(double x1Pct, double y1Px, double x2Pct, double y2Px, String style) {
        return add("<line class=\"" + style + "\" x1=\"" + pct(x1Pct) + "\" y1=\"" + px(y1Px) + "\" x2=\"" + pct(x2Pct)
                + "\" y2=\"" + px(y2Px) + "\"/>");
    }

    /**
     * @param asidePx moved to the right of its place by so much
     */
    Svg text(double xPct, double yPx, double asidePx, String style, String text) {
        return add("<text class=\"" + style + "\" x=\"" + pct(xPct) + "\" y=\"" + px(yPx) + "\" dx=\"" + px(asidePx)
                + "\">" + escaped(text) + "</text>");
    }

    String end() {
        return add("</svg>").out.toString();
    }

    static String pct(double value) {
        return px(value) + "%";
    }

    /** At most two digits after the point, none where there is nothing to say. */
    static String px(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("A place in a picture is a number, not " + value);
        }
        var text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceFirst("\\.?0+$", "").replaceFirst("^-0$", "0");
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
