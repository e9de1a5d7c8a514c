package eggwright.invented.truth;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The text of a truth cut into sections and keys, each with its line. */
final class TruthLines {
    /** A value as written. */
    record Cell(String text, int line) {}

    /** The lines of one section. */
    record Block(String section, int line, Map<String, Cell> cells) {}

    final Map<String, Block> blocks = new LinkedHashMap<>();
    /** Lists said to be empty, by their word. */
    final Map<String, Integer> none = new LinkedHashMap<>();

    final List<String> mistakes = new ArrayList<>();

    static TruthLines of(String text) {
        var lines = new TruthLines();
        int number = 0;
        for (var line : text.split("\\R", -1)) {
            number++;
            var plain = number == 1 ? line.replace("\uFEFF", "").strip() : line.strip();
            if (!plain.isEmpty() && !plain.startsWith("#")) {
                lines.take(plain, number);
            }
        }
        return lines;
    }

    private void take(String line, int number) {
        int equals = line.indexOf('=');
        int slash = equals < 0 ? -1 : line.lastIndexOf('/', equals);
        var value = equals < 0 ? "" : line.substring(equals + 1).strip();
        if (equals >= 0 && slash < 0 && value.equals("none")) {
            none.put(line.substring(0, equals).strip(), number);
            return;
        }
        if (equals < 0 || slash < 0) {
            mistakes.add("Line " + number + ": \"" + line + "\" is not of the form section / key = value.");
            return;
        }
        var section = line.substring(0, slash).strip();
        var key = line.substring(slash + 1, equals).strip();
        var block = blocks.computeIfAbsent(section, s -> new Block(s, number, new LinkedHashMap<>()));
        var before = block.cells.putIfAbsent(key, new Cell(value, number));
        if (before != null) {
            mistakes.add("Line " + number + ": " + section + " / " + key + " stands twice, first on line "
                    + before.line() + ". Keep one.");
        }
    }
}
