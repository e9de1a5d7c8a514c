package eggwright.egg.outline;

import java.util.function.DoubleUnaryOperator;

/** Simpson's rule along an egg's axis. The integrands are smooth, so that 400 steps leave an error below 1e-9. */
final class Quadrature {
    static final double CUBIC_MM_IN_CUBIC_CM = 1000;
    static final double SQUARE_MM_IN_SQUARE_CM = 100;
    private static final int STEPS = 400;

    private Quadrature() {}

    static double over(Outline outline, DoubleUnaryOperator integrand) {
        double length = outline.size().length().millimetres();
        double step = length / STEPS;
        double sum = integrand.applyAsDouble(-length / 2) + integrand.applyAsDouble(length / 2);
        for (int i = 1; i < STEPS; i++) {
            sum += (i % 2 == 0 ? 2 : 4) * integrand.applyAsDouble(i * step - length / 2);
        }
        return sum * step / 3;
    }
}
