package eggwright.invented.truth;

/**
 * A section of a setter.
 *
 * @param machine whose
 * @param midLogit change of middle death there, in logits
 * @param lateLogit change of late death there, in logits
 * @param weightLossTimes weight loss there as a multiple of the machine's: above 1 where it is dry
 */
public record SectionTruth(String machine, String name, double midLogit, double lateLogit, double weightLossTimes) {
    public static final SectionTruth PLAIN = new SectionTruth("Setter", "1", 0, 0, 1);

    public SectionTruth {
        name = new eggwright.book.name.SectionName(name).text();
        Within.logit("mid_logit", midLogit);
        Within.logit("late_logit", lateLogit);
        Within.range("weight_loss_times", weightLossTimes, 0, 5);
    }
}
