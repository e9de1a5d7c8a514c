package eggwright.book.entry;

/**
 * An entry of a kind that this version does not know. It is kept as it came and goes out again unchanged.
 *
 * @param written the payload as received
 */
public record UnknownPayload(String kind, String written) implements Payload {
    public UnknownPayload {
        kind = Checks.text("Kind", kind);
    }
}
