package eggwright.egg.outline;

import eggwright.egg.body.EggSize;

/** An egg with two alike ends: the ellipse turned about its long axis, V = pi L B²/6. */
public record Spheroid(EggSize size) implements Outline {
    @Override
    public double radiusSquared(double x) {
        double length = size.length().millimetres();
        double breadth = size.breadth().millimetres();
        return breadth * breadth / 4 * (1 - 4 * x * x / (length * length));
    }

    @Override
    public double radiusTimesSlope(double x) {
        double length = size.length().millimetres();
        double breadth = size.breadth().millimetres();
        return -breadth * breadth * x / (length * length);
    }
}
