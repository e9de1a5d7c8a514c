package eggwright.stats.mixed;

import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.MatrixUtils;

/** Makes the columns of the terms, and the way back from the columns used inside to those asked for. */
final class DesignBuilder {
    private static final int NONE = -1;
    private static final int MOST_COLUMNS = 1000;

    private final int rows;
    private final int[] trials;
    private final List<String> names = new ArrayList<>(List.of(MixedModel.INTERCEPT));
    private final List<Block> blocks = new ArrayList<>();
    private final List<String> empty = new ArrayList<>();
    /** For each column used inside, which of the columns asked for it is made of. */
    private final List<List<Share>> made = new ArrayList<>(List.of(List.of(new Share(0, 1))));

    private record Share(int column, double of) {}

    private DesignBuilder(int[] trials) {
        this.trials = trials;
        rows = trials.length;
    }

    /**
     * The columns of an intercept and the terms.
     *
     * @param trials by row; a row without any tells nothing of its kinds
     * @throws OutOfRange if a term has not as many rows, an interaction stands without its two terms, or two columns would
     *     have the same name
     */
    static Design of(int[] trials, List<Term> terms) {
        var builder = new DesignBuilder(trials);
        for (var term : terms) {
            switch (term) {
                case Term.Numbers numbers -> builder.add(numbers);
                case Term.Category category -> builder.add(category);
                case Term.Interaction interaction -> builder.add(interaction);
            }
        }
        int columns = builder.names.size();
        var back = MatrixUtils.createRealMatrix(columns, columns);
        for (int column = 0; column < columns; column++) {
            for (var share : builder.made.get(column)) {
                back.addToEntry(share.column, column, share.of);
            }
        }
        return new Design(builder.names, builder.blocks, back, builder.empty);
    }

    private int newColumn(String name, List<Share> madeOf) {
        int column = names.size();
        if (column == MOST_COLUMNS) {
            throw new OutOfRange("The fixed terms need more than " + MOST_COLUMNS
                    + " coefficients. Leave some out, or let their groups scatter");
        }
        if (names.contains(name)) {
            throw new OutOfRange("\"" + name + "\" would be the name of two coefficients. Rename one of the columns");
        }
        names.add(name);
        var shares = new ArrayList<>(madeOf);
        made.add(shares);
        return column;
    }

    private void add(Term.Numbers term) {
        var scaled = scaled(term);
        int column = names.size();
        newColumn(
                term.name(),
                List.of(new Share(column, 1 / scaled.spread()), new Share(0, -scaled.middle() / scaled.spread())));
        blocks.add(new Block.Numbers(column, scaled.values()));
    }

    private void add(Term.Category term) {
        check(term.name(), term.levelOfRow().length);
        int[] columnOfLevel = new int[term.levels().size()];
        Arrays.fill(columnOfLevel, NONE);
        for (int level = 1; level < columnOfLevel.length; level++) {
            int column = names.size();
            columnOfLevel[level] = newColumn(named(term, level), List.of(new Share(column, 1)));
        }
        int[] columns = new int[rows];
        for (int row = 0; row < rows; row++) {
            columns[row] = columnOfLevel[term.levelOfRow()[row]];
        }
        blocks.add(new Block.Kinds(columns));
    }

    private void add(Term.Interaction term) {
        switch (term.one()) {
            case Term.Numbers one -> {
                switch (term.other()) {
                    case Term.Numbers other -> add(one, other);
                    case Term.Category other -> add(one, other, true);
                    case Term.Interaction deeper -> throw tooDeep(deeper);
                }
            }
            case Term.Category one -> {
                switch (term.other()) {
                    case Term.Numbers other -> add(other, one, false);
                    case Term.Category other -> add(one, other);
                    case Term.Interaction deeper -> throw tooDeep(deeper);
                }
            }
            case Term.Interaction deeper -> throw tooDeep(deeper);
        }
    }

    private void add(Term.Numbers one, Term.Numbers other) {
        var a = scaled(one);
        var b = scaled(other);
        double[] values = new double[rows];
        for (int row = 0; row < rows; row++) {
            values[row] = a.values()[row] * b.values()[row];
        }
        double scale = 1 / (a.spread() * b.spread());
        int column = names.size();
        newColumn(
                one.name() + " by " + other.name(),
                List.of(
                        new Share(column, scale),
                        new Share(at(one.name()), -b.middle() * scale),
                        new Share(at(other.name()), -a.middle() * scale),
                        new Share(0, a.middle() * b.middle() * scale)));
        blocks.add(new Block.Numbers(column, values));
    }

    private void add(Term.Numbers number, Term.Category category, boolean numberFirst) {
        var scaled = scaled(number);
        int[] columnOfLevel = new int[category.levels().size()];
        Arrays.fill(columnOfLevel, NONE);
        for (int level = 1; level < columnOfLevel.length; level++) {
            var kind = named(category, level);
            int column = names.size();
            columnOfLevel[level] = newColumn(
                    numberFirst ? number.name() + " by " + kind : kind + " by " + number.name(),
                    List.of(
                            new Share(column, 1 / scaled.spread()),
                            new Share(at(kind), -scaled.middle() / scaled.spread())));
        }
        int[] columns = new int[rows];
        for (int row = 0; row < rows; row++) {
            columns[row] = columnOfLevel[category.levelOfRow()[row]];
        }
        blocks.add(new Block.NumbersByKind(columns, scaled.values()));
    }

    private void add(Term.Category one, Term.Category other) {
        var has = new boolean[one.levels().size()][other.levels().size()];
        for (int row = 0; row < rows; row++) {
            has[one.levelOfRow()[row]][other.levelOfRow()[row]] |= trials[row] > 0;
        }
        boolean[][] told = CellsTold.of(has);
        int[][] columnOf = new int[has.length][other.levels().size()];
        for (int a = 0; a < has.length; a++) {
            Arrays.fill(columnOf[a], NONE);
            for (int b = 1; a > 0 && b < columnOf[a].length; b++) {
                var name = named(one, a) + " by " + named(other, b);
                if (told[a][b]) {
                    int column = names.size();
                    columnOf[a][b] = newColumn(name, List.of(new Share(column, 1)));
                } else {
                    empty.add(name);
                }
            }
        }
        int[] columns = new int[rows];
        for (int row = 0; row < rows; row++) {
            columns[row] = columnOf[one.levelOfRow()[row]][other.levelOfRow()[row]];
        }
        blocks.add(new Block.Kinds(columns));
    }

    private static String named(Term.Category category, int level) {
        return category.name() + "=" + category.levels().get(level);
    }

    private int at(String name) {
        int at = names.indexOf(name);
        if (at < 0) {
            throw new OutOfRange("\"" + name + "\" stands in an interaction but not by itself. Add it as a term");
        }
        return at;
    }

    private ScaledNumbers scaled(Term.Numbers term) {
        check(term.name(), term.values().length);
        return ScaledNumbers.of(term);
    }

    private void check(String name, int length) {
        if (length != rows) {
            throw new OutOfRange(name + " has " + length + " rows where the counts have " + rows);
        }
    }

    private static OutOfRange tooDeep(Term.Interaction deeper) {
        return new OutOfRange("\"" + deeper.name() + "\" is itself an interaction. Only two terms can interact");
    }
}
