package eggwright.desk.note;

import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.LookSort;
import eggwright.book.entry.Looked;
import eggwright.book.entry.PlaceSeen;
import eggwright.desk.form.Field;
import eggwright.desk.form.Field.Need;
import eggwright.trade.caution.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A look at the lamp: what was seen, and what was treated otherwise than usual. */
final class LookForm {
    private static final Pattern PLACE = Pattern.compile("([1-9]\\d{0,3})\\s+(.+)");

    /** What is usually taken out as soon as it is seen. The others usually stay in. */
    private static final Set<Finding> USUALLY_OUT =
            EnumSet.of(Finding.CLEAR, Finding.BLOOD_RING, Finding.DEAD, Finding.CRACKED, Finding.ROT);

    private LookForm() {}

    static EntryForm of() {
        return EntryForm.of(
                "looked",
                Shelf.LAMP,
                Looked.class,
                LookForm::askLook,
                LookForm::readLook,
                LookForm::writeLook,
                Place.ROTTEN_EGGS,
                Place.CANDLING_LAMP);
    }

    private static List<Field> askLook(Asks asks) {
        var fields = new ArrayList<Field>();
        fields.add(asks.known().sets("set"));
        fields.add(asks.known().tray("tray", "set").optional());
        for (var finding : Finding.values()) {
            fields.add(asks.eggs("seen_" + finding.word()));
        }
        fields.add(asks.eggs("removed_unsorted").optional());
        fields.add(asks.rows(
                "exception",
                1,
                List.of(
                        asks.list("finding", Finding.class),
                        asks.plainEggs("left_in").optional(),
                        asks.plainEggs("kept_to_open").optional(),
                        asks.plainEggs("taken_out").optional())));
        fields.add(asks.fold(
                "look",
                asks.known().pens(Need.OPTIONAL),
                asks.eggs("counted_before").optional(),
                asks.eggs("looked_at").optional(),
                asks.whole("minutes_out", "minutes").optional(),
                asks.text("seen_at").optional(),
                asks.list("look_sort", LookSort.class)));
        return fields;
    }

    /** Eggs whose treatment was not the usual one. */
    private record Unusual(int leftIn, int keptToOpen, int takenOut) {
        static final Unusual NONE = new Unusual(0, 0, 0);
    }

    private static Looked readLook(FormReader r) {
        var exceptions = new EnumMap<Finding, Unusual>(Finding.class);
        for (var row : r.rows("exception")) {
            exceptions.put(
                    row.choice("finding", Finding.class),
                    new Unusual(
                            row.wholeOrNought("left_in"),
                            row.wholeOrNought("kept_to_open"),
                            row.wholeOrNought("taken_out")));
        }
        var sort = r.isEmpty("look_sort") ? null : r.choice("look_sort", LookSort.class);
        var findings = new ArrayList<FindingCount>();
        for (var finding : Finding.values()) {
            int seen = r.wholeOrNought("seen_" + finding.word());
            var exception = exceptions.getOrDefault(finding, Unusual.NONE);
            int kept = exception.keptToOpen();
            int removed = isUsuallyOut(finding, sort) ? seen - exception.leftIn() - kept : exception.takenOut();
            if (removed < 0 || removed + kept > seen) {
                r.mend("seen_" + finding.word(), "look.moreThanSeen", seen);
            } else if (seen > 0) {
                findings.add(new FindingCount(finding, seen, removed, kept));
            }
        }
        int unsorted = r.wholeOrNought("removed_unsorted");
        return new Looked(
                Scopes.read(r),
                r.wholeOrNone("looked_at"),
                r.wholeOrNone("counted_before"),
                findings,
                unsorted,
                r.wholeOrNone("minutes_out"),
                places(r),
                sort);
    }

    /** Whoever looks blind marks and leaves all in, unless the note says otherwise of some. */
    private static boolean isUsuallyOut(Finding finding, @Nullable LookSort sort) {
        return sort != LookSort.SECOND_BLIND && USUALLY_OUT.contains(finding);
    }

    /** "3 clear, 9 blood ring": places in the tray, each with what its egg showed. */
    private static List<PlaceSeen> places(FormReader r) {
        var places = new ArrayList<PlaceSeen>();
        for (var part : r.text("seen_at").split(",", -1)) {
            var place = PLACE.matcher(part.strip());
            var finding = place.matches() ? finding(place.group(2)) : Optional.<Finding>empty();
            if (finding.isPresent()) {
                places.add(new PlaceSeen(Integer.parseInt(place.group(1)), finding.get()));
            } else if (!part.isBlank()) {
                r.mend("seen_at", "look.places", part.strip());
            }
        }
        return places;
    }

    private static Optional<Finding> finding(String words) {
        return Arrays.stream(Finding.values())
                .filter(f -> f.word().replace('_', ' ').equalsIgnoreCase(words.strip()))
                .findFirst();
    }

    private static Written writeLook(Looked it) {
        var written = Scopes.write(new Written(), it.scope())
                .whole("looked_at", it.lookedAt())
                .whole("counted_before", it.countedBefore())
                .whole("minutes_out", it.minutesOut())
                .whole("removed_unsorted", it.removedUnsorted() == 0 ? null : it.removedUnsorted());
        written.text(
                "seen_at",
                it.places().stream()
                        .map(p -> p.place() + " " + p.finding().word().replace('_', ' '))
                        .collect(Collectors.joining(", ")));
        var sort = it.sort();
        if (sort != null) {
            written.choice("look_sort", sort);
        }
        int row = 0;
        for (var count : it.findings()) {
            written.whole("seen_" + count.finding().word(), count.seen());
            var usual = isUsuallyOut(count.finding(), sort);
            int left = usual ? count.leftIn() : 0;
            int out = usual ? 0 : count.removed();
            if (left > 0 || out > 0 || count.keptToOpen() > 0) {
                var at = "exception." + row + ".";
                row++;
                written.choice(at + "finding", count.finding())
                        .whole(at + "left_in", left)
                        .whole(at + "kept_to_open", count.keptToOpen())
                        .whole(at + "taken_out", out);
            }
        }
        return written;
    }
}
