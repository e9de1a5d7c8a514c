package eggwright.egg.outline;

import eggwright.egg.body.EggSize;
import eggwright.units.Length;
import eggwright.units.OutOfRange;

/**
 * Hügelschäffer's egg: y = (B/2) sqrt((L² - 4x²)/(L² + 8wx + 4w²)), where the greatest breadth lies w from the middle,
 * towards the blunt end. With w = 0 it is the spheroid.
 *
 * @param size length and greatest breadth
 * @param shift w, from 0 to a quarter of the length
 */
public record Hugelschaffer(EggSize size, Length shift) implements Outline {
    /** Below this share of the length the closed form loses digits, and quadrature does not. */
    private static final double SMALL_SHIFT = 1e-3;

    public Hugelschaffer {
        OutOfRange.check(
                "Shift of the breadth", shift.millimetres(), 0, size.length().millimetres() / 4, "mm");
    }

    @Override
    public double radiusSquared(double x) {
        double breadth = size.breadth().millimetres();
        return breadth * breadth / 4 * above(x) / below(x);
    }

    @Override
    public double radiusTimesSlope(double x) {
        double breadth = size.breadth().millimetres();
        double belowSlope = 8 * shift.millimetres();
        return breadth * breadth / 8 * (-8 * x * below(x) - above(x) * belowSlope) / (below(x) * below(x));
    }

    /**
     * In cm³, in closed form (derived, and checked against quadrature): with
     * a = L² + 4w², V = (pi B²/4) (a L/(16w²) + (L² - a²/(16w²))/(4w) ln((L + 2w)/(L - 2w))).
     */
    public double closedVolumeCubicCentimetres() {
        double length = size.length().millimetres();
        double breadth = size.breadth().millimetres();
        double w = shift.millimetres();
        if (w < SMALL_SHIFT * length) {
            return volumeCubicCentimetres();
        }
        double a = length * length + 4 * w * w;
        double log = Math.log((length + 2 * w) / (length - 2 * w));
        double integral = a * length / (16 * w * w) + (length * length - a * a / (16 * w * w)) / (4 * w) * log;
        return Math.PI * breadth * breadth / 4 * integral / Quadrature.CUBIC_MM_IN_CUBIC_CM;
    }

    private double above(double x) {
        double length = size.length().millimetres();
        return length * length - 4 * x * x;
    }

    private double below(double x) {
        double length = size.length().millimetres();
        double w = shift.millimetres();
        return length * length + 8 * w * x + 4 * w * w;
    }
}
