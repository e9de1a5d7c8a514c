package eggwright.egg.outline;

import eggwright.egg.body.EggSize;

/**
 * The outline of an egg: its radius along its axis, from the blunt end at -L/2 to the pointed end at +L/2. All lengths in
 * mm.
 */
public sealed interface Outline permits Spheroid, Hugelschaffer, UniversalOutline {
    /** What callipers read. */
    EggSize size();

    /** Radius squared at a place on the axis, in mm². */
    double radiusSquared(double x);

    /** Half the derivative of {@link #radiusSquared}: radius times its slope, in mm. */
    double radiusTimesSlope(double x);

    /** Radius at a place on the axis, in mm; zero beyond the ends. */
    default double radius(double x) {
        return Math.sqrt(Math.max(0, radiusSquared(x)));
    }

    /** Volume in cm³: pi times the integral of the radius squared. */
    default double volumeCubicCentimetres() {
        return Math.PI * Quadrature.over(this, this::radiusSquared) / Quadrature.CUBIC_MM_IN_CUBIC_CM;
    }

    /**
     * Surface in cm²: 2 pi times the integral of y sqrt(1 + y'²), written as sqrt(y² + (y y')²), which stays smooth at
     * the ends where y' does not.
     */
    default double surfaceSquareCentimetres() {
        return 2
                * Math.PI
                * Quadrature.over(this, x -> Math.hypot(Math.sqrt(Math.max(0, radiusSquared(x))), radiusTimesSlope(x)))
                / Quadrature.SQUARE_MM_IN_SQUARE_CM;
    }
}
