package eggwright.forecast.chance;

/** The triangular root of a symmetric positive matrix, held row by row in one array: small, and used many thousand times. */
public final class Cholesky {
    private final double[] root;
    private final int size;

    private Cholesky(double[] root, int size) {
        this.root = root;
        this.size = size;
    }

    /** Of a matrix that is singular, the root of its regular part. */
    public static Cholesky of(double[] matrix, int size) {
        var root = new double[size * size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i * size + j];
                for (int k = 0; k < j; k++) {
                    sum -= root[i * size + k] * root[j * size + k];
                }
                double pivot = root[j * size + j];
                root[i * size + j] = i == j ? Math.sqrt(Math.max(0, sum)) : pivot > 0 ? sum / pivot : 0;
            }
        }
        return new Cholesky(root, size);
    }

    /** Of the matrix; negative infinity where it is singular. */
    public double logDeterminant() {
        double log = 0;
        for (int i = 0; i < size; i++) {
            log += 2 * Math.log(root[i * size + i]);
        }
        return log;
    }

    /** Root times a vector. */
    double[] times(double[] v) {
        var out = new double[size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i; j++) {
                out[i] += root[i * size + j] * v[j];
            }
        }
        return out;
    }

    /** Solves root x = v. */
    double[] forward(double[] v) {
        var x = new double[size];
        for (int i = 0; i < size; i++) {
            double sum = v[i];
            for (int j = 0; j < i; j++) {
                sum -= root[i * size + j] * x[j];
            }
            x[i] = sum / root[i * size + i];
        }
        return x;
    }

    /** Solves root transposed x = v. */
    public double[] backward(double[] v) {
        var x = new double[size];
        for (int i = size - 1; i >= 0; i--) {
            double sum = v[i];
            for (int j = i + 1; j < size; j++) {
                sum -= root[j * size + i] * x[j];
            }
            x[i] = sum / root[i * size + i];
        }
        return x;
    }

    /** Solves matrix x = v. */
    public double[] solve(double[] v) {
        return backward(forward(v));
    }

    /** The inverse of the matrix. */
    public double[] inverse() {
        var inverse = new double[size * size];
        for (int i = 0; i < size; i++) {
            var unit = new double[size];
            unit[i] = 1;
            System.arraycopy(solve(unit), 0, inverse, i * size, size);
        }
        return inverse;
    }
}
