package eggwright.desk.who;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a device may do at the desk. */
public enum Role {
    /** Everything. */
    OWNER,
    /** Notes what was seen and done, and reads all but who has joined. */
    HAND,
    /** Reads. */
    LOOKER;

    /** The word in forms, in the book's file and in texts. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The role of that word; empty where there is none. */
    public static Optional<Role> of(String word) {
        return Stream.of(values()).filter(role -> role.word().equals(word)).findFirst();
    }
}
