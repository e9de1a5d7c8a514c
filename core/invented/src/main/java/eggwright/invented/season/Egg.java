package eggwright.invented.season;

import eggwright.book.entry.Finding;
import eggwright.book.name.PenName;
import eggwright.invented.answer.EggStory;
import eggwright.invented.answer.Germ;
import eggwright.invented.answer.TrueFate;
import eggwright.trade.BreakOutClass;
import java.time.LocalDate;

/** One egg in a machine, and what it will come to unless something else befalls it first. */
final class Egg {
    /** An embryo dead by this day has left nothing that the lamp shows. */
    private static final int NOTHING_TO_SEE_DAY = 2;

    final PenName pen;
    final LocalDate laidOn;
    final Germ germ;
    TrueFate end;
    /** Day of incubation on which the end comes; 0 for an egg that never began. */
    int endDay;

    /** When the chick leaves the shell; meaningless for an egg that does not hatch. */
    double hatchDays;

    Egg(PenName pen, LocalDate laidOn, Germ germ, TrueFate end, int endDay) {
        this.pen = pen;
        this.laidOn = laidOn;
        this.germ = germ;
        this.end = end;
        this.endDay = endDay;
    }

    void ends(TrueFate how, int day) {
        end = how;
        endDay = day;
    }

    boolean isAliveOn(int day) {
        return germ == Germ.FERTILE && day < endDay;
    }

    /** What it shows to a good eye. */
    Finding showsOn(int day) {
        if (day < endDay) {
            return germ == Germ.FERTILE ? Finding.LIVE : Finding.CLEAR;
        }
        return switch (end) {
            case INFERTILE -> Finding.CLEAR;
            case CRACKED -> Finding.CRACKED;
            case CONTAMINATED -> Finding.ROT;
            case EARLY_DEAD -> endDay <= NOTHING_TO_SEE_DAY ? Finding.CLEAR : Finding.BLOOD_RING;
            case MID_DEAD, LATE_DEAD, MALFORMED, PIPPED_DEAD -> Finding.DEAD;
            case TAKEN_OUT_ALIVE, TOO_LATE, DEAD_IN_BASKET, CULLED, SALEABLE -> Finding.LIVE;
        };
    }

    /** Taken out at the lamp: whatever else was to come does not. */
    void takenOutOn(int day) {
        if (day < endDay) {
            if (germ == Germ.FERTILE) {
                ends(TrueFate.TAKEN_OUT_ALIVE, day);
            } else {
                ends(TrueFate.INFERTILE, 0);
            }
        }
    }

    /** What it shows when opened after it was taken out or failed to hatch. */
    BreakOutClass opened(Bird bird) {
        return switch (end) {
            case INFERTILE -> BreakOutClass.INFERTILE;
            case CRACKED -> germ == Germ.FERTILE ? BreakOutClass.EARLY_DEAD : BreakOutClass.INFERTILE;
            case CONTAMINATED -> BreakOutClass.CONTAMINATED;
            case EARLY_DEAD -> BreakOutClass.EARLY_DEAD;
            case MID_DEAD -> BreakOutClass.MID_DEAD;
            case LATE_DEAD -> BreakOutClass.LATE_DEAD;
            case MALFORMED -> BreakOutClass.MALFORMED;
            case PIPPED_DEAD, TOO_LATE -> BreakOutClass.PIPPED_DEAD;
            case TAKEN_OUT_ALIVE -> bird.classOn(endDay);
            case DEAD_IN_BASKET, CULLED, SALEABLE ->
                throw new IllegalStateException("A chick was taken for an egg to open");
        };
    }

    EggStory story() {
        return new EggStory(pen, laidOn, germ, end, endDay);
    }
}
