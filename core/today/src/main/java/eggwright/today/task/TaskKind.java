package eggwright.today.task;

import eggwright.trade.caution.Place;
import java.util.List;
import java.util.Locale;

/** The kinds of work, in the order in which they come when they are equally urgent. */
public enum TaskKind {
    TAKE_OFF(Lateness.OVERDUE),
    TRANSFER(Lateness.OVERDUE),
    DELIVER(Lateness.OVERDUE),
    /** Only where setter and hatcher are one machine and its eggs are of one age. */
    STOP_TURNING(Lateness.LET_GO),
    /** Only where setter and hatcher are one machine and its eggs are of one age. */
    RAISE_HUMIDITY(Lateness.LET_GO),
    /** Overdue only while eggs wait beyond the storage advice. */
    SET_EGGS(Lateness.OVERDUE),
    CANDLE(Lateness.STILL_POSSIBLE),
    DAILY_ROUND(Lateness.LET_GO),
    /** Washed, dry and at heat a day before the transfer. */
    PREPARE_HATCHER(Lateness.LET_GO),
    EXPECT_HATCH(Lateness.LET_GO),
    EXPECT_PIPS(Lateness.LET_GO),
    /** From the evening before they are set. */
    WARM_EGGS(Lateness.LET_GO),
    WARM_BROODER(Lateness.LET_GO),
    BOXES_READY(Lateness.LET_GO),
    CLEAN_MACHINE(Lateness.OVERDUE),
    BREAK_OUT(Lateness.LET_GO),
    /** Eggs taken out at a look. */
    DISPOSE(Lateness.LET_GO);

    private final Lateness lateness;

    TaskKind(Lateness lateness) {
        this.lateness = lateness;
    }

    /** For message keys and answers to other programs, as {@code take_off}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Lateness lateness() {
        return lateness;
    }

    /** Where this work can hurt somebody. */
    public List<Place> cautions() {
        return switch (this) {
            case TAKE_OFF -> List.of(Place.DUST, Place.HUMANE_KILLING, Place.ZOONOSES);
            case TRANSFER -> List.of(Place.ROTTEN_EGGS);
            case DELIVER -> List.of(Place.ZOONOSES, Place.PERMITS);
            case STOP_TURNING, SET_EGGS, EXPECT_HATCH, EXPECT_PIPS, WARM_EGGS, BOXES_READY -> List.of();
            case RAISE_HUMIDITY, DAILY_ROUND -> List.of(Place.CURRENT_AND_WATER);
            case CANDLE -> List.of(Place.ROTTEN_EGGS, Place.CANDLING_LAMP);
            case PREPARE_HATCHER -> List.of(Place.DISINFECTANT, Place.CURRENT_AND_WATER);
            case WARM_BROODER -> List.of(Place.HEAT_LAMPS);
            case CLEAN_MACHINE -> List.of(Place.DUST, Place.DISINFECTANT, Place.CURRENT_AND_WATER);
            case BREAK_OUT -> List.of(Place.BREAK_OUT, Place.HUMANE_KILLING, Place.ROTTEN_EGGS);
            case DISPOSE -> List.of(Place.DISPOSAL, Place.ROTTEN_EGGS);
        };
    }
}
