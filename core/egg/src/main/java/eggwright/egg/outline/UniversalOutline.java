package eggwright.egg.outline;

import eggwright.egg.body.EggSize;
import eggwright.units.Length;
import eggwright.units.OutOfRange;

/**
 * The universal formula of an egg: Narushin, Romanov and Griffin 2021, Ann. N. Y. Acad. Sci. 1505:169, eq. 5 (seen in two
 * open reproductions that agree). Hügelschäffer's egg times a factor that brings the diameter at a quarter of the length
 * from the pointed end to what was measured there.
 *
 * @param size length and greatest breadth
 * @param shift w: how far the greatest breadth lies from the middle, towards the blunt end
 * @param quarterDiameter D: diameter at L/4 from the middle towards the pointed end
 */
public record UniversalOutline(EggSize size, Length shift, Length quarterDiameter) implements Outline {
    public UniversalOutline {
        // The shift is checked by the egg that this one is made from.
        var egg = new Hugelschaffer(size, shift);
        double widest = 2 * egg.radius(size.length().millimetres() / 4);
        OutOfRange.check("Diameter at a quarter", quarterDiameter.millimetres(), widest / 2, widest * 1.05, "mm");
    }

    @Override
    public double radiusSquared(double x) {
        double factor = factor(x);
        return egg().radiusSquared(x) * factor * factor;
    }

    @Override
    public double radiusTimesSlope(double x) {
        double factor = factor(x);
        double factorSlope = weight() * root(x) / 2 * (aboveSlope() / above(x) - belowSlope(x) / below(x));
        return egg().radiusTimesSlope(x) * factor * factor + egg().radiusSquared(x) * factor * factorSlope;
    }

    private Hugelschaffer egg() {
        return new Hugelschaffer(size, shift);
    }

    private double factor(double x) {
        return 1 - weight() * (1 - root(x));
    }

    /** f1 (f3 - 2 D f2)/(f3 (f1 - 2 f2)) of the paper. */
    private double weight() {
        double l = length();
        double w = shift.millimetres();
        double f1 = Math.sqrt(5.5 * l * l + 11 * l * w + 4 * w * w);
        double f2 = Math.sqrt(l * l + 2 * w * l + 4 * w * w);
        double f3 = Math.sqrt(3) * size.breadth().millimetres() * l;
        return f1 * (f3 - 2 * quarterDiameter.millimetres() * f2) / (f3 * (f1 - 2 * f2));
    }

    private double root(double x) {
        return Math.sqrt(above(x) / below(x));
    }

    private double above(double x) {
        double l = length();
        double w = shift.millimetres();
        return l * (l * l + 8 * w * x + 4 * w * w);
    }

    private double aboveSlope() {
        return 8 * length() * shift.millimetres();
    }

    private double below(double x) {
        double l = length();
        double w = shift.millimetres();
        return 2 * (l - 2 * w) * x * x + linear() * x + 2 * l * w * w + l * l * w + l * l * l;
    }

    private double belowSlope(double x) {
        return 4 * (length() - 2 * shift.millimetres()) * x + linear();
    }

    private double linear() {
        double l = length();
        double w = shift.millimetres();
        return l * l + 8 * l * w - 4 * w * w;
    }

    private double length() {
        return size.length().millimetres();
    }
}
