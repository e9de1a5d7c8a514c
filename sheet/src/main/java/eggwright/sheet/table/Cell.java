package eggwright.sheet.table;

/** What stands in one cell. Text is trimmed; a number or a date of a spreadsheet is its plain text. */
public sealed interface Cell {
    Cell EMPTY = new Text("");

    /** As a person reads it. */
    String shown();

    /** Text, or a number or date in plain digits: {@code 12.5}, {@code 2027-04-05}. */
    record Text(String shown) implements Cell {}

    /** A formula: what it comes to depends on other cells, and the file may hold an old answer. */
    record Formula(String shown) implements Cell {}

    /** A spreadsheet's own word for a failed formula, such as {@code #REF!}. */
    record Faulty(String shown) implements Cell {}
}
