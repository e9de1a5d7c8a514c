package eggwright.trade;

import java.util.Arrays;
import java.util.Optional;

/** What an opened egg shows. The days that a class means differ by species: {@link SpeciesProfile#days}. */
public enum BreakOutClass {
    INFERTILE(Stage.INFERTILE, "small solid white spot, no ring"),
    EARLY_DEAD(Stage.EARLY_DEAD, "ringed disc, membrane or blood ring, embryo without dark eye"),
    MID_DEAD(Stage.MID_DEAD, "dark eye; later feathers, with a large yolk still outside"),
    LATE_DEAD(Stage.LATE_DEAD, "fills the shell, yolk going in"),
    PIPPED_DEAD(Stage.PIPPED_DEAD, "shell starred, chick dead in it"),
    CONTAMINATED(Stage.CONTAMINATED, "discoloured, smells, foams or swells"),
    MALFORMED(Stage.MALFORMED, "dead with a faulty body or in a faulty place");

    private final Stage stage;
    private final String mark;

    BreakOutClass(Stage stage, String mark) {
        this.stage = stage;
        this.mark = mark;
    }

    public Stage stage() {
        return stage;
    }

    /** The word of files and reports, the same as that of its stage. */
    public String word() {
        return stage.word();
    }

    /** What is seen when the egg is opened. From memory: no readable page gave all the marks. */
    public String mark() {
        return mark;
    }

    public static Optional<BreakOutClass> ofWord(String word) {
        return Arrays.stream(values()).filter(c -> c.word().equals(word)).findFirst();
    }
}
