package eggwright.rates.candler;

import eggwright.book.name.PersonName;
import eggwright.book.picture.Fate;
import eggwright.rates.Basis;
import eggwright.units.Rate;
import java.util.EnumMap;
import java.util.Map;

/** Adds up what is told of one person. */
final class PersonSum {
    final PersonName who;
    int looks;

    int called;
    int infertileOpened;
    int developedOpened;
    int grownOpened;

    int looksTold;
    int calledTold;
    int calledToldOpened;
    int calledToldNotInfertile;
    int missed;
    int undecided;
    long eggDays;
    int hatcherPlaces;
    final Map<NotTold, Integer> leftOut = new EnumMap<>(NotTold.class);

    PersonSum(PersonName who) {
        this.who = who;
    }

    /** Eggs opened as anything but infertile, of those that clears may be. */
    static int developed(Opening opening) {
        return opening.named(Fate.EARLY_DEAD)
                + opening.named(Fate.MID_DEAD)
                + opening.named(Fate.LATE_DEAD)
                + opening.named(Fate.PIPPED_DEAD)
                + opening.named(Fate.MALFORMED);
    }

    Candler candler() {
        int named = infertileOpened + developedOpened;
        int caught = calledTold - calledToldNotInfertile;
        return new Candler(
                who,
                looks,
                new FalseClears(called, new Rate(grownOpened, named), new Rate(developedOpened, named)),
                new MissedClears(
                        new Rate(missed, (long) missed + caught),
                        basis(),
                        undecided,
                        looksTold,
                        leftOut,
                        eggDays,
                        hatcherPlaces));
    }

    private Basis basis() {
        if (calledToldOpened == calledTold) {
            return Basis.OPENED;
        }
        return calledToldOpened == 0 ? Basis.APPARENT : Basis.MIXED;
    }
}
