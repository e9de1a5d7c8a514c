package eggwright.units;

/**
 * So many of so many: never a bare percentage.
 *
 * @param count those that did, at least 0
 * @param of those that could have, at least {@code count}
 */
public record Rate(long count, long of) {
    public Rate {
        if (!(count >= 0 && count <= of)) {
            throw new OutOfRange("A rate of " + count + " of " + of + " is outside 0 to all");
        }
    }

    /** Whether there is anything to take a share of. */
    public boolean isEmpty() {
        return of == 0;
    }

    /** 0 to 1; not a number when there is nothing to take a share of. */
    public double share() {
        return of == 0 ? Double.NaN : (double) count / of;
    }

    /** 0 to 100; not a number when there is nothing to take a share of. */
    public double pct() {
        return 100 * share();
    }

    public Rate plus(Rate other) {
        return new Rate(count + other.count, of + other.of);
    }
}
