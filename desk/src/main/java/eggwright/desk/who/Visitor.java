package eggwright.desk.who;

import eggwright.book.name.DeviceName;
import java.util.Optional;

/** Who is asking. */
public sealed interface Visitor {
    /** What an entry says that was noted at the desk's own keyboard. */
    DeviceName DESK = new DeviceName("desk");

    /** The machine that the desk runs on, over its own loopback: the owner, without signing in. */
    record ThisMachine() implements Visitor {}

    /**
     * A device that has joined, or on which the owner has signed in.
     *
     * @param id of its joining; a device that is let go and joins again has another
     */
    record Joined(String id, DeviceName name, Role as) implements Visitor {}

    /**
     * No person: a thing that shows a token in its request. Only the route that takes tokens makes anything of it, and
     * says itself whether it is good; to every other it is nobody.
     */
    record Bearer(String token) implements Visitor {}

    /** Nobody that the desk knows. */
    record Nobody() implements Visitor {}

    /** Empty for nobody, and for what is no person. */
    default Optional<Role> role() {
        return switch (this) {
            case ThisMachine here -> Optional.of(Role.OWNER);
            case Joined joined -> Optional.of(joined.as());
            case Bearer bearer -> Optional.empty();
            case Nobody nobody -> Optional.empty();
        };
    }

    /**
     * The name that entries carry which are noted in this visit.
     *
     * @throws IllegalStateException for nobody, and for what is no person: they may note nothing
     */
    default DeviceName device() {
        return switch (this) {
            case ThisMachine here -> DESK;
            case Joined joined -> joined.name();
            case Bearer bearer -> throw new IllegalStateException("A sensor notes nothing");
            case Nobody nobody -> throw new IllegalStateException("Nobody may note nothing");
        };
    }
}
