package eggwright.sheet.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The columns of a season file, in the order in which messages and pages list them. */
public enum SeasonColumn {
    SET(Holds.NAME),
    SET_ON(Holds.DATE),
    SPECIES(Holds.SPECIES),
    PEN(Holds.NAME),
    TRAY(Holds.NAME),
    MACHINE(Holds.NAME),
    SECTION(Holds.NAME),
    LAID_FROM(Holds.DATE),
    LAID_TO(Holds.DATE),
    EGGS(Holds.COUNT),
    CANDLED_ON(Holds.DATE),
    CLEAR(Holds.COUNT),
    BLOOD_RING(Holds.COUNT),
    DEAD(Holds.COUNT),
    CRACKED(Holds.COUNT),
    ROT(Holds.COUNT),
    DOUBTFUL(Holds.COUNT),
    TRANSFERRED_ON(Holds.DATE),
    TRANSFERRED(Holds.COUNT),
    HATCHED_ON(Holds.DATE),
    SALEABLE(Holds.COUNT),
    CULLED(Holds.COUNT),
    DEAD_IN_BASKET(Holds.COUNT),
    OPENED(Holds.COUNT),
    CLEARS_OPENED(Holds.COUNT),
    INFERTILE(Holds.COUNT),
    EARLY_DEAD(Holds.COUNT),
    MID_DEAD(Holds.COUNT),
    LATE_DEAD(Holds.COUNT),
    PIPPED_DEAD(Holds.COUNT),
    CONTAMINATED(Holds.COUNT),
    MALFORMED(Holds.COUNT);

    /** What a column holds. */
    public enum Holds {
        NAME,
        SPECIES,
        DATE,
        COUNT
    }

    /** Without these a row says nothing; every other column may be absent or empty. */
    public static final List<SeasonColumn> REQUIRED = List.of(SET, SET_ON, SPECIES, TRAY, EGGS);

    /** Counts at the lamp of eggs that were taken out. */
    static final List<SeasonColumn> REMOVED = List.of(CLEAR, BLOOD_RING, DEAD, CRACKED, ROT);

    /** Counts at the lamp. */
    static final List<SeasonColumn> LAMP = List.of(CLEAR, BLOOD_RING, DEAD, CRACKED, ROT, DOUBTFUL);

    /** Counts at the take-off. */
    static final List<SeasonColumn> TAKE_OFF = List.of(SALEABLE, CULLED, DEAD_IN_BASKET);

    /** Classes of the break-out. */
    static final List<SeasonColumn> CLASSES =
            List.of(INFERTILE, EARLY_DEAD, MID_DEAD, LATE_DEAD, PIPPED_DEAD, CONTAMINATED, MALFORMED);

    private final Holds holds;
    private final String word = name().toLowerCase(Locale.ROOT);

    SeasonColumn(Holds holds) {
        this.holds = holds;
    }

    /** As in the header of the file. */
    public String word() {
        return word;
    }

    public Holds holds() {
        return holds;
    }

    public static Optional<SeasonColumn> ofWord(String word) {
        return Arrays.stream(values()).filter(c -> c.word.equals(word)).findFirst();
    }

    static List<String> words() {
        return Arrays.stream(values()).map(SeasonColumn::word).toList();
    }

    static String words(List<SeasonColumn> columns) {
        var words = new ArrayList<>(columns.stream().map(SeasonColumn::word).toList());
        var last = words.removeLast();
        return words.isEmpty() ? last : String.join(", ", words) + " and " + last;
    }
}
