package eggwright.desk.note;

import eggwright.book.entry.SecondLookAsked;
import eggwright.book.name.PersonName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Asks that trays be candled once more, blind, by somebody else. */
final class SecondLookForm {
    private SecondLookForm() {}

    static EntryForm of() {
        return EntryForm.of(
                "second-look-asked",
                Shelf.LAMP,
                SecondLookAsked.class,
                asks -> List.of(
                        asks.known().sets("set"),
                        asks.text("trays"),
                        asks.text("asked_of").optional()),
                r -> new SecondLookAsked(
                        r.name("set", SetName::new), trays(r), r.nameOrNone("asked_of", PersonName::new)),
                it -> new Written()
                        .name("set", it.set())
                        .text("trays", it.trays().stream().map(TrayName::text).collect(Collectors.joining(", ")))
                        .name("asked_of", it.of()));
    }

    private static List<TrayName> trays(FormReader r) {
        var trays = new ArrayList<TrayName>();
        for (var part : r.text("trays").split(",", -1)) {
            if (!part.isBlank()) {
                try {
                    trays.add(new TrayName(part.strip()));
                } catch (OutOfRange refused) {
                    r.mend("trays", refused);
                }
            }
        }
        if (trays.isEmpty()) {
            r.mend("trays", "secondLook.noTrays");
            trays.add(new TrayName("1"));
        }
        return trays;
    }
}
