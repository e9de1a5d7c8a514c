package eggwright.today.eggroom;

import eggwright.book.picture.PenPicture;
import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Which cocks can have sired the eggs. */
public enum Sires {
    /** Those of the pen. */
    OF_THE_PEN,
    /** Laid in the three weeks after a change of cocks: either of two. */
    MIXED,
    /** No pen, or no lay dates, were noted. */
    NOT_KNOWN;

    /** For message keys. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Sires of(@Nullable PenPicture pen, @Nullable LocalDate laidFrom, @Nullable LocalDate laidTo) {
        var from = laidFrom == null ? laidTo : laidFrom;
        var to = laidTo == null ? laidFrom : laidTo;
        if (pen == null || from == null || to == null) {
            return NOT_KNOWN;
        }
        var mixed = pen.hasMixedSires(from)
                || pen.hasMixedSires(to)
                || pen.changes().stream()
                        .map(PenPicture.Changed::on)
                        .anyMatch(on -> on.isAfter(from) && on.isBefore(to) && pen.hasMixedSires(on));
        return mixed ? MIXED : OF_THE_PEN;
    }
}
