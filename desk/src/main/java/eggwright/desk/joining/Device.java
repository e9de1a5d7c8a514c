package eggwright.desk.joining;

import eggwright.book.name.DeviceName;
import eggwright.desk.who.Role;
import eggwright.desk.who.Visitor;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A device that has joined, or on which the owner has signed in.
 *
 * @param id of its joining, never used again
 * @param name that entries carry; no other device ever had it
 * @param tokenSha256 64 hex digits; the token itself is only on the device
 * @param seen when it last asked something, to some minutes
 * @param ends when it is out by itself
 * @param letGo when it was put out; null while it was not
 */
public record Device(
        String id,
        DeviceName name,
        Role role,
        Way way,
        String tokenSha256,
        Instant joined,
        Instant seen,
        Instant ends,
        @Nullable Instant letGo) {
    /** How it came in. */
    public enum Way {
        /** By a code shown at the desk. */
        CODE,
        /** The owner signed in on it. */
        PASSPHRASE
    }

    /** Whether it may ask anything at this time. */
    public boolean isIn(Instant now) {
        return letGo == null && now.isBefore(ends);
    }

    Visitor visitor() {
        return new Visitor.Joined(id, name, role);
    }

    Device seenAt(Instant now, Instant newEnd) {
        return new Device(id, name, role, way, tokenSha256, joined, now, newEnd, letGo);
    }

    Device as(Role other) {
        return new Device(id, name, other, way, tokenSha256, joined, seen, ends, letGo);
    }

    Device goneAt(Instant now) {
        return new Device(id, name, role, way, tokenSha256, joined, seen, ends, now);
    }
}
