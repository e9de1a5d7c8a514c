package eggwright.stats.mixed;

/** Values by row, put into another order. */
final class Rows {
    private Rows() {}

    static double[] ordered(double[] values, int[] order) {
        double[] ordered = new double[order.length];
        for (int i = 0; i < order.length; i++) {
            ordered[i] = values[order[i]];
        }
        return ordered;
    }

    static int[] ordered(int[] values, int[] order) {
        int[] ordered = new int[order.length];
        for (int i = 0; i < order.length; i++) {
            ordered[i] = values[order[i]];
        }
        return ordered;
    }

    static double[] doubles(int[] values, int[] order) {
        double[] ordered = new double[order.length];
        for (int i = 0; i < order.length; i++) {
            ordered[i] = values[order[i]];
        }
        return ordered;
    }
}
