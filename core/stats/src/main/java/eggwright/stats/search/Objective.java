package eggwright.stats.search;

/** Something to be made small, with its slope. */
public interface Objective {
    int size();

    /** The value at a point, with its slope put into {@code slope}; not a number where it cannot be had. */
    double at(double[] point, double[] slope);
}
