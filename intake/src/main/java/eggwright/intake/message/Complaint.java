package eggwright.intake.message;

import java.time.Instant;
import java.util.List;

/**
 * Why a message was not taken. Nothing of such a message is kept.
 *
 * @param about what it is about, in the order of the kind: what stood there, what would be right
 */
public record Complaint(Kind kind, List<String> about) {
    /** As much of what was sent as is shown again. */
    private static final int LONGEST_SHOWN = 60;

    /** Each has its words in the bundle of whoever shows it. */
    public enum Kind {
        /** Nothing stands in it. */
        EMPTY,
        /** What was sent; neither a number nor JSON. */
        NOT_A_NUMBER,
        /** Not JSON that can be read; its line and column, each from 1, or nothing where that is not known. */
        NOT_JSON,
        /** The member that is not known. */
        UNKNOWN_MEMBER,
        /** JSON without a value. */
        NO_VALUE,
        /** The unit that was sent, the unit of the sensor. */
        OTHER_UNIT,
        /** The time that was sent; no time that can be read. */
        NOT_A_TIME,
        /** The time that was sent; it says no offset. */
        NO_OFFSET,
        /** The time that was sent; it is still to come. */
        STILL_TO_COME,
        /** The time that was sent; a clock that was never set. */
        CLOCK_NEVER_SET,
        /** Of several readings in one message each needs its time. */
        TIMES_NEEDED,
        /** How many at most. */
        TOO_MANY_READINGS,
        /** How many bytes at most. */
        TOO_LONG,
        /** How many messages a minute at most. */
        TOO_OFTEN,
        /** Nobody has this token. */
        UNKNOWN_TOKEN,
        /** Whose token it was. */
        REVOKED_TOKEN,
        /** The broker held it back for later: an old reading that does not say of when. */
        RETAINED,
        /** The broker sent it once more: a reading that does not say of when, and may be known. */
        REPEATED,
        /** The book could not be written; why. */
        NOT_SAVED
    }

    public Complaint {
        about = about.stream().map(Complaint::shortened).toList();
    }

    public static Complaint of(Kind kind, Object... about) {
        return new Complaint(kind, List.of(about).stream().map(String::valueOf).toList());
    }

    /** When something was last complained of. */
    public record Last(Instant at, Complaint why) {}

    private static String shortened(String text) {
        var plain = new StringBuilder();
        text.codePoints()
                .limit(LONGEST_SHOWN)
                .map(c -> Character.isISOControl(c) || c == 0xFFFD ? '·' : c)
                .forEach(plain::appendCodePoint);
        return text.codePointCount(0, text.length()) > LONGEST_SHOWN ? plain + "…" : plain.toString();
    }
}
