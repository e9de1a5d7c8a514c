package eggwright.desk.picture;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What became of a set: one bar as long as the eggs set, cut by fate in the order in which fates happen, each with its
 * number; the expected split as a hairline under it.
 *
 * @param eggsSet length of the bar
 * @param scaleEggs eggs that the whole width stands for; the largest set where several bars share a page
 * @param parts their eggs sum to the eggs set; those without eggs are left out of the drawing
 * @param expected how these eggs were expected to end; empty where nothing is expected
 * @param totalLabel words at the end of the bar, as "54 set"
 */
public record AccountBar(
        String id,
        String title,
        String says,
        long eggsSet,
        long scaleEggs,
        List<Part> parts,
        Optional<Expected> expected,
        String totalLabel,
        Numbers numbers)
        implements Picture {
    private static final int BAR_TOP_PX = 22;
    private static final int BAR_PX = 40;
    private static final int HAIRLINE_PX = BAR_TOP_PX + BAR_PX + 8;
    private static final int UNDER_PX = HAIRLINE_PX + 20;
    private static final int LINE_PX = 20;
    /** The narrowest screen's picture, and the width of a digit there: a number is drawn where its part can hold it. */
    private static final double NARROWEST_PX = 320;

    /** The picture on a large screen. */
    private static final double ROOMY_PX = 800;

    private static final double DIGIT_PX = 9;
    private static final double SIGN_PX = 7.5;

    /** So many eggs that ended in one way. */
    public record Part(String label, long eggs, Ink ink) {}

    /**
     * How the eggs were expected to end.
     *
     * @param label of the hairline, as "expected by day 8"
     * @param shares in the order of the bar; their eggs sum to the eggs set
     */
    public record Expected(String label, List<Share> shares) {
        public Expected {
            shares = List.copyOf(shares);
        }
    }

    /** So many eggs, fractions and all. */
    public record Share(String label, double eggs) {}

    public AccountBar {
        parts = List.copyOf(parts);
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
        int under = expected.isEmpty() ? BAR_TOP_PX + BAR_PX + LINE_PX : UNDER_PX + LINE_PX;
        var svg = Svg.of(this, under + 4, "room");
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
            var bold = part.ink() == Ink.SALEABLE ? "mid bold" : "mid";
            word(svg, from * pctPerEgg(), width, BAR_TOP_PX - 6, DIGIT_PX * number.length() + 2, bold, number);
            from += part.eggs();
        }
        expected.ifPresent(e -> drawExpected(svg, e, under));
        var end = eggsSet * pctPerEgg();
        svg.text(end, under, 0, end < 40 ? "soft" : "soft end", totalLabel);
        return svg.end();
    }

    private void drawExpected(Svg svg, Expected usual, int under) {
        svg.line(0, HAIRLINE_PX, eggsSet * pctPerEgg(), HAIRLINE_PX, "axis");
        svg.line(0, HAIRLINE_PX - 4, 0, HAIRLINE_PX + 4, "axis");
        var at = 0.0;
        for (var share : usual.shares()) {
            var width = share.eggs() * pctPerEgg();
            var words = String.format(Locale.ROOT, "%s %.0f", share.label(), share.eggs());
            word(svg, at * pctPerEgg(), width, UNDER_PX, SIGN_PX * words.length(), "soft mid", words);
            at += share.eggs();
            svg.line(at * pctPerEgg(), HAIRLINE_PX - 4, at * pctPerEgg(), HAIRLINE_PX + 4, "axis");
        }
        svg.text(0, under, 0, "soft", usual.label());
    }

    /** In the middle of its part where that can hold it on any screen; on a large screen only, where it can there. */
    private static void word(
            Svg svg, double fromPct, double widthPct, double y, double neededPx, String style, String words) {
        if (widthPct / 100 * ROOMY_PX >= neededPx) {
            var everywhere = widthPct / 100 * NARROWEST_PX >= neededPx;
            svg.text(fromPct + widthPct / 2, y, 0, everywhere ? style : style + " roomy", words);
        }
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
