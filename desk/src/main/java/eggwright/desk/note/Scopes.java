package eggwright.desk.note;

import eggwright.book.entry.Scope;
import eggwright.book.name.BasketName;
import eggwright.book.name.EntryId;
import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Which eggs a count speaks of: a set, a tray, a pen, a basket, or those of one look. */
final class Scopes {
    private static final List<String> NAMES = List.of("set", "tray", "pen", "basket", "look");

    private Scopes() {}

    static Scope read(FormReader r) {
        var basket = r.nameOrNone("basket", BasketName::new);
        var set = basket == null ? r.name("set", SetName::new) : r.nameOrNone("set", SetName::new);
        var tray = r.nameOrNone("tray", TrayName::new);
        var look = r.nameOrNone("look", EntryId::parse);
        return new Scope(set, tray, r.nameOrNone("pen", PenName::new), basket, look);
    }

    /** Absent where nothing was named. */
    static @Nullable Scope readOrNone(FormReader r) {
        return NAMES.stream().allMatch(r::isEmpty)
                ? null
                : r.made(() -> new Scope(
                        r.nameOrNone("set", SetName::new),
                        r.nameOrNone("tray", TrayName::new),
                        r.nameOrNone("pen", PenName::new),
                        r.nameOrNone("basket", BasketName::new),
                        r.nameOrNone("look", EntryId::parse)));
    }

    static Written write(Written written, Scope scope) {
        return written.name("set", scope.set())
                .name("tray", scope.tray())
                .name("pen", scope.pen())
                .name("basket", scope.basket())
                .typed("look", scope.look());
    }
}
