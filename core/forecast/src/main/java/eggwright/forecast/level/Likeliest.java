package eggwright.forecast.level;

import java.util.List;
import java.util.stream.IntStream;

/** Finds where the counts of all cells are likeliest together, and the normals that stand for them there. */
final class Likeliest {
    /** Newton's steps: at most so many, none longer than that, until they are so short; in logits. */
    private static final int STEPS = 25;

    private static final double LONGEST = 1;
    private static final double CLOSE = 0.03;

    private final Field field;
    /** By set and cell, in logits from what is expected: beforehand where published farms lie in the middle. */
    private double[][] at;

    Likeliest(Field field) {
        this.field = field;
        this.at = IntStream.range(0, field.sets.size())
                .mapToObj(s -> field.cells.get(s).stream()
                        .mapToDouble(c -> field.levels.get(c.species).mean())
                        .toArray())
                .toArray(double[][]::new);
    }

    /** By set and cell, under a guess at the scatter of trays; the others are taken in the middle. */
    List<List<Cell.Normal>> normals(int tray) {
        double moved = Double.POSITIVE_INFINITY;
        for (int step = 0; step < STEPS && moved > CLOSE; step++) {
            var seen = Seen.all(field, normals(tray, Cell.Bend.CAREFUL), middle(Scatter.sets()));
            moved = move(new Pass(field, middle(Scatter.drifts()), middle(Scatter.pens()), seen).middle());
        }
        return normals(tray, Cell.Bend.AS_IT_IS);
    }

    private static double middle(List<Scatter.Guess> guesses) {
        return guesses.get(1).value();
    }

    private List<List<Cell.Normal>> normals(int tray, Cell.Bend bend) {
        return IntStream.range(0, at.length)
                .mapToObj(s -> IntStream.range(0, at[s].length)
                        .mapToObj(c -> field.cells.get(s).get(c).normalAt(at[s][c], tray, bend))
                        .toList())
                .toList();
    }

    /** Moves towards a path; gives the longest step. */
    private double move(Pass.Path path) {
        double longest = 0;
        for (int s = 0; s < at.length; s++) {
            for (int c = 0; c < at[s].length; c++) {
                var cell = field.cells.get(s).get(c);
                double to = path.lies()[s][cell.species] + cell.ofPens(path.pens());
                double by = Math.clamp(to - at[s][c], -LONGEST, LONGEST);
                at[s][c] += by;
                longest = Math.max(longest, Math.abs(by));
            }
        }
        return longest;
    }
}
