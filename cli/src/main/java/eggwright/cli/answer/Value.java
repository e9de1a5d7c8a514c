package eggwright.cli.answer;

import java.util.List;

/** A value in an answer. */
public sealed interface Value {
    /** A number, unrounded; one that is not finite is answered as JSON's null and an empty cell. */
    record Real(double number) implements Value {}

    /** A whole number. */
    record Whole(long number) implements Value {}

    /** Yes or no. */
    record Truth(boolean yes) implements Value {}

    /** Words, an instant, a date. */
    record Text(String text) implements Value {}

    /** Several values, in order. */
    record Many(List<Value> values) implements Value {
        /** Copies the list. */
        public Many {
            values = List.copyOf(values);
        }
    }

    /** An answer within an answer. */
    record Group(Answer answer) implements Value {}

    /** Texts, in order. */
    static Value texts(List<String> texts) {
        return new Many(texts.stream().<Value>map(Text::new).toList());
    }

    /** Whole numbers, in order. */
    static Value wholes(List<Integer> numbers) {
        return new Many(numbers.stream().<Value>map(Whole::new).toList());
    }
}
