package eggwright.cli.answer;

import java.util.ArrayList;
import java.util.List;

/**
 * One answer: named values in the order in which they are shown. Keys carry the unit ({@code humidity_pct}) and are
 * kept stable, for other programs read them.
 */
public record Answer(List<Field> fields) {
    /** A named value. */
    public record Field(String key, Value value) {}

    /** Copies the list. */
    public Answer {
        fields = List.copyOf(fields);
    }

    /** Nothing said yet. */
    public static Answer of() {
        return new Answer(List.of());
    }

    /** With one more value at the end. */
    public Answer with(String key, Value value) {
        var more = new ArrayList<>(fields);
        more.add(new Field(key, value));
        return new Answer(more);
    }

    /** With one more number at the end. */
    public Answer with(String key, double number) {
        return with(key, new Value.Real(number));
    }

    /** With one more whole number at the end. */
    public Answer with(String key, long number) {
        return with(key, new Value.Whole(number));
    }

    /** With one more text at the end. */
    public Answer with(String key, String text) {
        return with(key, new Value.Text(text));
    }

    /** With an answer of its own at the end. */
    public Answer with(String key, Answer group) {
        return with(key, new Value.Group(group));
    }
}
