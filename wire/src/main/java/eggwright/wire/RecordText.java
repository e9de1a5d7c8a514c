package eggwright.wire;

import java.util.SortedMap;

/**
 * Records as JSON for the desk's own scripts, by the rule that payloads follow: components in order under snake-case
 * names, what is absent left out, enums as lower-case words.
 */
public final class RecordText {
    private RecordText() {}

    /** One object on one line. */
    public static String of(Record record) {
        return Tree.text(out -> PayloadWriter.object(out, record));
    }

    /** Texts under their own keys. */
    public static String of(SortedMap<String, String> texts) {
        return Tree.text(out -> {
            out.writeStartObject();
            for (var text : texts.entrySet()) {
                out.writeStringField(text.getKey(), text.getValue());
            }
            out.writeEndObject();
        });
    }
}
