package eggwright.stats.mixed;

/**
 * The rows of a model in the order of their cells.
 *
 * @param design its fixed columns, in that order
 * @param successes by place
 * @param trials by place
 */
record Problem(Cells cells, Design design, double[] successes, double[] trials) {
    static Problem of(MixedModel model, Design design) {
        var cells = new Cells(model.counts().rows(), model.random());
        return new Problem(
                cells,
                design.ordered(cells.order),
                Rows.doubles(model.counts().successes(), cells.order),
                Rows.doubles(model.counts().trials(), cells.order));
    }

    int rows() {
        return successes.length;
    }
}
