package eggwright.forecast.level;

import eggwright.forecast.chance.Belief;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What one set's counts say under one scatter of trays and one of sets.
 *
 * @param said of level, slope and pens, the set's own luck taken out
 * @param own how the set's own luck follows from them
 */
record Seen(Belief said, Belief.Step own) {
    /**
     * By set.
     *
     * @param normals which stand for the cells, by set
     * @param spread of whole sets, in logits of each loss
     */
    static List<Seen> all(Field field, List<List<Cell.Normal>> normals, double spread) {
        var variance = field.luck(spread * spread);
        return IntStream.range(0, normals.size())
                .mapToObj(s -> of(field, s, normals.get(s), variance))
                .toList();
    }

    /**
     * @param normals which stand for the set's cells, in their order
     * @param variance of whole sets, by species
     */
    private static Seen of(Field field, int set, List<Cell.Normal> normals, double[] variance) {
        int m = field.species();
        var inner = new Belief(m + field.pens.size());
        var cells = field.cells.get(set);
        for (int c = 0; c < cells.size(); c++) {
            add(inner, m, cells.get(c), normals.get(c));
        }
        var own = inner.step(variance);
        return new Seen(outer(field, set, inner), own);
    }

    private static void add(Belief inner, int m, Cell cell, Cell.Normal normal) {
        int a = cell.species;
        int n = inner.size;
        inner.log += normal.log();
        inner.pull[a] += normal.pull();
        inner.precision[a * n + a] += normal.precision();
        for (int i = 0; i < cell.pens.length; i++) {
            int p = m + cell.pens[i];
            double share = cell.shares[i];
            inner.pull[p] += share * normal.pull();
            inner.precision[a * n + p] += share * normal.precision();
            inner.precision[p * n + a] += share * normal.precision();
            for (int j = 0; j < cell.pens.length; j++) {
                inner.precision[p * n + m + cell.pens[j]] += share * cell.shares[j] * normal.precision();
            }
        }
    }

    /** From where the set's species lie to their levels and slopes. */
    private static Belief outer(Field field, int set, Belief inner) {
        int m = field.species();
        var outer = new Belief(field.size());
        outer.log = inner.log;
        for (int i = 0; i < inner.size; i++) {
            for (int s = 0; s < (i < m ? 2 : 1); s++) {
                int to = i < m ? i + s * m : i + m;
                double times = s == 1 ? field.week(set, i) : 1;
                outer.pull[to] += times * inner.pull[i];
                for (int j = 0; j < inner.size; j++) {
                    double value = times * inner.precision[i * inner.size + j];
                    if (j < m) {
                        outer.precision[to * outer.size + j] += value;
                        outer.precision[to * outer.size + m + j] += value * field.week(set, j);
                    } else {
                        outer.precision[to * outer.size + m + j] += value;
                    }
                }
            }
        }
        return outer;
    }

    /** How the set's species lie, given level, slope and pens. */
    double[] lies(Field field, int set, double[] z, double[] noise) {
        int m = field.species();
        var after = new double[m + field.pens.size()];
        for (int a = 0; a < m; a++) {
            after[a] = z[a] + field.week(set, a) * z[m + a];
        }
        System.arraycopy(z, 2 * m, after, m, field.pens.size());
        var moved = own.moved(after, noise);
        var lies = new double[m];
        for (int a = 0; a < m; a++) {
            lies[a] = after[a] - moved[a];
        }
        return lies;
    }
}
