package eggwright.rates;

/** Which parcels of an account are tied together: each has a root, and those with the same root belong together. */
final class Ties {
    private final int[] root;

    private Ties(int[] root) {
        this.root = root;
    }

    /** Nothing tied. */
    static Ties none(int parcels) {
        int[] root = new int[parcels];
        for (int i = 0; i < parcels; i++) {
            root[i] = i;
        }
        return new Ties(root);
    }

    Ties copy() {
        return new Ties(root.clone());
    }

    int rootOf(int parcel) {
        int at = parcel;
        while (root[at] != at) {
            root[at] = root[root[at]];
            at = root[at];
        }
        return at;
    }

    void tie(int[] together) {
        for (int i = 1; i < together.length; i++) {
            root[rootOf(together[i])] = rootOf(together[0]);
        }
    }

    void tieAll() {
        for (int i = 1; i < root.length; i++) {
            root[rootOf(i)] = rootOf(0);
        }
    }
}
