package eggwright.desk.note;

import eggwright.book.entry.Entry;
import eggwright.desk.who.Role;
import eggwright.desk.who.Visitor;
import java.util.Set;

/**
 * Who may note and mend what, beyond who may use the forms at all. It holds for forms and for what scripts send alike. The
 * guide has it as a table.
 */
public final class Rights {
    /** What the farm does, and what it goes by: for the owner to say. */
    private static final Set<String> OWNERS = Set.of("farm-habits", "species-override");

    private Rights() {}

    /** Whether this visitor may note an entry of this kind. */
    public static boolean mayNote(Visitor visitor, String kindWord) {
        return visitor.role()
                .map(role -> switch (role) {
                    case OWNER -> true;
                    case HAND -> !OWNERS.contains(kindWord);
                    case LOOKER -> false;
                })
                .orElse(false);
    }

    /** Whether this visitor may mend an entry, or take it back: a hand only what was noted on its own device. */
    public static boolean mayChange(Visitor visitor, Entry entry) {
        return mayNote(visitor, entry.payload().kindWord())
                && (visitor.role().filter(role -> role == Role.OWNER).isPresent()
                        || entry.device().equals(visitor.device()));
    }
}
