package eggwright.desk.picture;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What became of a set: one bar as long as the eggs set, cut by fate in the order in which fates happen, each with its
 * number; the expected split as a hairline under it.
 *
 * @param eggsSet length of the bar
 * @param scaleEggs eggs that the whole width stands for; the largest set where several bars share a page
 * @param parts their eggs sum to the eggs set; those without eggs are left out of the drawing
 * @param expected where the same fates would end on a usual set, as eggs; empty where nothing is expected
 * @param expectedLabel words beside the hairline, as "as expected"
 * @param totalLabel words at the end of the bar, as "54 set"
 */
public record AccountBar(
        String id,
        String title,
        String says,
        long eggsSet,
        long scaleEggs,
        List<Part> parts,
        List<Double> expected,
        String expectedLabel,
        String totalLabel,
        Numbers numbers)
        implements Picture {
    private static final int BAR_TOP_PX = 22;
    private static final int BAR_PX = 40;
    private static final int HAIRLINE_PX = BAR_TOP_PX + BAR_PX + 8;
    private static final int HEIGHT_PX = HAIRLINE_PX + 24;
    /** The narrowest screen's picture, and the width of a digit there: a number is drawn where its part can hold it. */
    private static final double NARROWEST_PX = 320;

    private static final double DIGIT_PX = 9;

    /** So many eggs that ended in one way. */
    public record Part(String label, long eggs, Ink ink) {}

    public AccountBar {
        parts = List.copyOf(parts);
        expected = List.copyOf(expected);
        var sum = parts.stream().mapToLong(Part::eggs).sum();
        if (sum != eggsSet || parts.stream().anyMatch(p -> p.eggs() < 0)) {
            throw new IllegalArgumentException("The parts hold " + sum + " eggs, the set " + eggsSet);
        }
        if (eggsSet < 1 || scaleEggs < eggsSet) {
            throw new IllegalArgumentException("A bar of " + eggsSet + " eggs does not fit a scale of " + scaleEggs);
        }
    }

    @Override
    public String svg() {
        var svg = Svg.of(this, HEIGHT_PX, "room");
        svg.add(drawn().stream()
                .map(p -> p.ink().pattern(id))
                .distinct()
                .collect(Collectors.joining("", "<defs>", "</defs>")));
        var from = 0L;
        for (var part : drawn()) {
            var width = part.eggs() * pctPerEgg();
            svg.rect(
                    from * pctPerEgg(),
                    BAR_TOP_PX,
                    width,
                    BAR_PX,
                    "class=\"edge\" " + part.ink().fill(id));
            var number = Long.toString(part.eggs());
            if (width / 100 * NARROWEST_PX >= DIGIT_PX * number.length() + 2) {
                var bold = part.ink() == Ink.SALEABLE ? " bold" : "";
                svg.text(from * pctPerEgg() + width / 2, BAR_TOP_PX - 6, 0, "mid" + bold, number);
            }
            from += part.eggs();
        }
        drawExpected(svg);
        var end = eggsSet * pctPerEgg();
        svg.text(end, HAIRLINE_PX + 20, 0, end < 40 ? "soft" : "soft end", totalLabel);
        return svg.end();
    }

    private void drawExpected(Svg svg) {
        if (expected.isEmpty()) {
            return;
        }
        svg.line(0, HAIRLINE_PX, eggsSet * pctPerEgg(), HAIRLINE_PX, "axis");
        svg.line(0, HAIRLINE_PX - 4, 0, HAIRLINE_PX + 4, "axis");
        var at = 0.0;
        for (var eggs : expected) {
            at += eggs;
            svg.line(at * pctPerEgg(), HAIRLINE_PX - 4, at * pctPerEgg(), HAIRLINE_PX + 4, "axis");
        }
        svg.text(0, HAIRLINE_PX + 20, 0, "soft", expectedLabel);
    }

    @Override
    public List<Key> key() {
        return drawn().stream()
                .map(p -> new Key(p.ink().swatch(id), p.label(), Long.toString(p.eggs())))
                .toList();
    }

    private List<Part> drawn() {
        return parts.stream().filter(p -> p.eggs() > 0).toList();
    }

    private double pctPerEgg() {
        return 100.0 / scaleEggs;
    }
}
