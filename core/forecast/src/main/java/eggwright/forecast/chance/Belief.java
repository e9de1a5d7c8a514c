package eggwright.forecast.chance;

/**
 * A normal belief about several quantities, not normalised: {@code log density = log + pull' z - z' precision z / 2}. What is
 * learnt adds up in this form, and what was never counted weighs nothing.
 */
public final class Belief {
    public final int size;
    /** Symmetric, row by row. */
    public final double[] precision;

    public final double[] pull;
    public double log;

    /** Nothing is known yet. */
    public Belief(int size) {
        this.size = size;
        this.precision = new double[size * size];
        this.pull = new double[size];
    }

    public Belief copy() {
        var copy = new Belief(size);
        copy.add(this);
        return copy;
    }

    /** What the other says is believed too; it must be about as many quantities. */
    public void add(Belief other) {
        for (int i = 0; i < precision.length; i++) {
            precision[i] += other.precision[i];
        }
        for (int i = 0; i < size; i++) {
            pull[i] += other.pull[i];
        }
        log += other.log;
    }

    /**
     * The first quantities move by a normal step of mean 0: what was believed of them before is now believed of what they
     * were. Gives what must be kept to say, from where they are now, how they moved.
     *
     * @param variance of the step, of the first so many quantities
     */
    public Step step(double[] variance) {
        int moving = (int) Math.round(Math.sqrt(variance.length));
        // (I + variance * precision of the moving), inverted, times variance: right also where the variance is
        // singular.
        var mixed = new double[moving * moving];
        for (int i = 0; i < moving; i++) {
            for (int j = 0; j < moving; j++) {
                double sum = i == j ? 1 : 0;
                for (int k = 0; k < moving; k++) {
                    sum += variance[i * moving + k] * precision[k * size + j];
                }
                mixed[i * moving + j] = sum;
            }
        }
        var left = variance.clone();
        double logDeterminant = solve(mixed, left, moving);
        var rows = new double[moving * size];
        System.arraycopy(precision, 0, rows, 0, rows.length);
        var pulls = new double[moving];
        System.arraycopy(pull, 0, pulls, 0, moving);
        var step = new Step(moving, left, rows, pulls, Cholesky.of(left, moving));
        log -= logDeterminant / 2;
        for (int a = 0; a < moving; a++) {
            var held = new double[size];
            double heldPull = 0;
            for (int b = 0; b < moving; b++) {
                double m = left[a * moving + b];
                heldPull += m * pulls[b];
                for (int i = 0; i < size; i++) {
                    held[i] += m * rows[b * size + i];
                }
            }
            log += heldPull * pulls[a] / 2;
            for (int i = 0; i < size; i++) {
                double row = rows[a * size + i];
                pull[i] -= row * heldPull;
                for (int j = 0; j < size; j++) {
                    precision[i * size + j] -= row * held[j];
                }
            }
        }
        return step;
    }

    /**
     * Solves matrix x = right by elimination with the greatest pivot, right becoming x; gives the log of the determinant, which
     * is positive though single pivots need not be.
     */
    private static double solve(double[] matrix, double[] right, int n) {
        double log = 0;
        for (int c = 0; c < n; c++) {
            int greatest = c;
            for (int r = c + 1; r < n; r++) {
                greatest = Math.abs(matrix[r * n + c]) > Math.abs(matrix[greatest * n + c]) ? r : greatest;
            }
            exchange(matrix, c, greatest, n);
            exchange(right, c, greatest, n);
            double pivot = matrix[c * n + c];
            log += Math.log(Math.abs(pivot));
            for (int r = 0; r < n; r++) {
                if (r != c) {
                    double times = matrix[r * n + c] / pivot;
                    for (int k = 0; k < n; k++) {
                        matrix[r * n + k] -= times * matrix[c * n + k];
                        right[r * n + k] -= times * right[c * n + k];
                    }
                }
            }
            for (int k = 0; k < n; k++) {
                right[c * n + k] /= pivot;
                matrix[c * n + k] /= pivot;
            }
        }
        return log;
    }

    private static void exchange(double[] matrix, int row, int other, int n) {
        for (int k = 0; row != other && k < n; k++) {
            double kept = matrix[row * n + k];
            matrix[row * n + k] = matrix[other * n + k];
            matrix[other * n + k] = kept;
        }
    }

    /** How the first quantities moved, given where all are after it. */
    public record Step(int moving, double[] variance, double[] rows, double[] pulls, Cholesky root) {
        /** @param noise standard normals, as many as move; zeros for the mean */
        public double[] moved(double[] after, double[] noise) {
            int size = after.length;
            var towards = new double[moving];
            for (int a = 0; a < moving; a++) {
                double sum = -pulls[a];
                for (int i = 0; i < size; i++) {
                    sum += rows[a * size + i] * after[i];
                }
                towards[a] = sum;
            }
            var by = root.times(noise);
            for (int a = 0; a < moving; a++) {
                for (int b = 0; b < moving; b++) {
                    by[a] += variance[a * moving + b] * towards[b];
                }
            }
            return by;
        }
    }
}
