package eggwright.wire;

import com.fasterxml.jackson.databind.JsonNode;

/** A field that does not hold what it should. Never leaves this room: it becomes {@link ReadEntry.Malformed}. */
final class Misread extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final int LONGEST_SHOWN = 80;

    Misread(String message) {
        super(message);
    }

    Misread(String field, JsonNode found, String right) {
        super("Field " + field + " is " + shown(found) + "; it should be " + right + ".");
    }

    Misread(FieldPath field, JsonNode found, String right) {
        this(field.toString(), found, right);
    }

    static Misread missing(String field) {
        return new Misread("Field " + field + " is missing.");
    }

    private static String shown(JsonNode found) {
        if (found.isMissingNode()) {
            return "missing";
        }
        var text = Tree.write(found);
        return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "...";
    }
}
