package eggwright.invented.truth;

/**
 * Scatter beyond that of single eggs.
 *
 * @param setFertilitySd whole sets, in logits
 * @param setLossSd whole sets, in logits, drawn for each stage of loss
 * @param trays how trays of a set scatter
 * @param fertilityRho intra-tray correlation of fertility, where trays are beta-binomial
 * @param lossRho the same for each stage of loss
 * @param fertilitySd in logits, where trays are logit-normal or heavy-tailed
 * @param lossSd the same for each stage of loss
 * @param tailDegrees degrees of freedom of Student's t, where trays are heavy-tailed
 */
public record ScatterTruth(
        double setFertilitySd,
        double setLossSd,
        Trays trays,
        double fertilityRho,
        double lossRho,
        double fertilitySd,
        double lossSd,
        double tailDegrees) {
    /** The family of the scatter between trays. Only the first is that of the analyses. */
    public enum Trays {
        BETA_BINOMIAL,
        LOGIT_NORMAL,
        /** Student's t in logits: now and then a tray far from all others. */
        HEAVY_TAILED
    }

    public static final ScatterTruth PLAIN = new ScatterTruth(0.12, 0.15, Trays.BETA_BINOMIAL, 0.01, 0.01, 0.3, 0.3, 3);

    public ScatterTruth {
        Within.range("set_fertility_sd", setFertilitySd, 0, 5);
        Within.range("set_loss_sd", setLossSd, 0, 5);
        Within.range("fertility_rho", fertilityRho, 0, 0.9);
        Within.range("loss_rho", lossRho, 0, 0.9);
        Within.range("fertility_sd", fertilitySd, 0, 5);
        Within.range("loss_sd", lossSd, 0, 5);
        Within.range("tail_degrees", tailDegrees, 1, 1000);
    }
}
