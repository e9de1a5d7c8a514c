package eggwright.desk.lamp;

import eggwright.book.entry.Entry;
import eggwright.book.fold.Effective;
import eggwright.book.fold.Ledger;
import eggwright.book.name.DeviceName;
import eggwright.book.name.PersonName;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.LookTaken;
import eggwright.book.picture.SecondLook;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A second, blind look that is still wanted of a load: asked for, and not yet taken by somebody who may. Whoever looked first
 * may not, for nobody is held against himself.
 *
 * @param of who is asked; absent where anybody else than the first will do
 * @param first who took the last usual look, on what device; several where pens were counted by several
 */
record SecondWanted(@Nullable PersonName of, List<First> first) {
    SecondWanted {
        first = List.copyOf(first);
    }

    record First(PersonName who, DeviceName device) {}

    static Optional<SecondWanted> of(LoadPicture load, Ledger ledger) {
        var looks = load.secondLooks();
        return looks.asked().stream()
                .filter(asked -> looks.taken().stream().noneMatch(taken -> answers(taken, asked, load, ledger)))
                .reduce((earlier, later) -> later)
                .map(asked -> new SecondWanted(asked.of(), firstBefore(Instant.MAX, load, ledger)));
    }

    private static boolean answers(LookTaken taken, SecondLook asked, LoadPicture load, Ledger ledger) {
        var at = taken.at().toInstant();
        return !at.isBefore(asked.at().toInstant())
                && entry(taken, ledger)
                        .map(Entry::who)
                        .filter(who -> asked.of() == null || isSame(who, asked.of()))
                        .filter(who -> firstBefore(at, load, ledger).stream().noneMatch(f -> isSame(f.who(), who)))
                        .isPresent();
    }

    /** Of the last day on which there was a usual look before an instant: all of its looks. */
    private static List<First> firstBefore(Instant instant, LoadPicture load, Ledger ledger) {
        var before = load.looks().stream()
                .filter(look -> look.at().toInstant().isBefore(instant))
                .toList();
        int day = before.stream().mapToInt(LookTaken::day).max().orElse(0);
        return before.stream()
                .filter(look -> look.day() == day)
                .flatMap(look -> entry(look, ledger).stream())
                .map(entry -> new First(entry.who(), entry.device()))
                .distinct()
                .toList();
    }

    private static Optional<Entry> entry(LookTaken look, Ledger ledger) {
        return ledger.effective(look.entry()).map(Effective::entry);
    }

    /** A name is typed on each phone anew: capitals make no other person. */
    private static boolean isSame(PersonName one, PersonName other) {
        return one.text().toLowerCase(Locale.ROOT).equals(other.text().toLowerCase(Locale.ROOT));
    }
}
