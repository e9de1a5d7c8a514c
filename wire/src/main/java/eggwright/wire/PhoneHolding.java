package eggwright.wire;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** What a phone says of the tray in its hands: {@code {"set":…,"tray":…,"who":…,"state":"has"}}. */
public record PhoneHolding(String set, String tray, String who, State state) {
    private static final int LONGEST = 100;

    /** What somebody does with a tray. */
    public enum State {
        HAS,
        DID
    }

    /** Empty where it is no such saying. */
    public static Optional<PhoneHolding> read(String text) {
        try {
            if (Tree.read(text) instanceof ObjectNode said) {
                return Optional.of(new PhoneHolding(
                        text(said, "set"),
                        text(said, "tray"),
                        text(said, "who"),
                        text(said, "state").equals("did") ? State.DID : State.HAS));
            }
        } catch (Misread noSaying) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    private static String text(ObjectNode said, String field) {
        var found = said.path(field);
        if (!found.isTextual() || found.textValue().length() > LONGEST) {
            throw new Misread(field, found, "a short text");
        }
        return found.textValue();
    }
}
