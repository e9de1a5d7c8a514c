package eggwright.rates.candler;

import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Looked;
import eggwright.book.fold.Effective;
import eggwright.book.name.PersonName;
import java.time.LocalDate;

/**
 * One look at some parcels of an account.
 *
 * @param of the parcels that its eggs came from
 * @param held eggs there before the look
 * @param seen eggs looked at
 * @param called eggs called clear that left
 * @param day of incubation; of the youngest parcel, where they differ
 */
record OneLook(Effective entry, Looked look, Lots of, int held, int seen, int called, int day) {
    PersonName who() {
        return entry.entry().who();
    }

    LocalDate on() {
        return entry.at().toLocalDate();
    }

    boolean isAfter(OneLook other) {
        return entry.compareTo(other.entry) > 0;
    }

    boolean leftClearsIn() {
        return look.findings().stream()
                        .filter(f -> f.finding() == Finding.CLEAR)
                        .mapToInt(FindingCount::leftIn)
                        .sum()
                > 0;
    }
}
