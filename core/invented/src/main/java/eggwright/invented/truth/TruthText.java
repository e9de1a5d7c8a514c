package eggwright.invented.truth;

import eggwright.units.OutOfRange;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A truth as plain text: lines {@code section / key = value}, lines that begin with # for people. What is left out is as in
 * {@link Truth#PLAIN}; a text that names one pen (event, machine ...) has only those it names. The keys are the components
 * of the truth's records, so text and program cannot come apart.
 */
public final class TruthText {
    private final TruthLines lines;
    private final List<String> mistakes;
    private final Set<String> used = new HashSet<>();

    private TruthText(TruthLines lines) {
        this.lines = lines;
        this.mistakes = lines.mistakes;
    }

    /** The text that {@link #read} gives back, every key named. */
    public static String write(Truth truth) {
        var text = new StringBuilder();
        for (var component : Truth.class.getRecordComponents()) {
            var value = Components.value(truth, component.getName());
            if (value instanceof Record part) {
                section(text, words(component.getName()), part);
            } else if (value instanceof List<?> many) {
                var list = list(component.getName());
                if (many.isEmpty()) {
                    text.append(list.word()).append(" = none\n\n");
                }
                for (int i = 0; i < many.size(); i++) {
                    if (many.get(i) instanceof Record part) {
                        section(text, list.word() + " " + label(list, part, i + 1), part);
                    }
                }
            }
        }
        return text.toString();
    }

    private static void section(StringBuilder text, String name, Record part) {
        for (var component : part.getClass().getRecordComponents()) {
            text.append(name)
                    .append(" / ")
                    .append(key(component.getName()))
                    .append(" = ")
                    .append(TruthValues.write(Components.value(part, component.getName())))
                    .append('\n');
        }
        text.append('\n');
    }

    private static String label(ListPart list, Record part, int number) {
        var plain = list.labelled() == null ? "" : TruthValues.write(Components.value(part, list.labelled()));
        return plain.matches("[\\p{L}\\p{N}][\\p{L}\\p{N} .-]*") ? plain : String.valueOf(number);
    }

    /** Reads a whole text; all its mistakes at once. */
    public static TruthReading read(String text) {
        return new TruthText(TruthLines.of(text)).read();
    }

    private TruthReading read() {
        var values = new ArrayList<>();
        for (var component : Truth.class.getRecordComponents()) {
            var plain = Components.value(Truth.PLAIN, component.getName());
            values.add(
                    plain instanceof Record part
                            ? single(words(component.getName()), part)
                            : several(component, plain));
        }
        for (var block : lines.blocks.values()) {
            if (!used.contains(block.section())) {
                mistakes.add("Line " + block.line() + ": \"" + block.section() + "\" is not a section. There are "
                        + sections() + ".");
            }
        }
        lines.none.forEach((word, line) -> {
            if (!used.contains(word)) {
                mistakes.add("Line " + line + ": \"" + word + "\" cannot be none.");
            }
        });
        if (!mistakes.isEmpty()) {
            return new TruthReading.Refused(mistakes);
        }
        try {
            return new TruthReading.Read(Components.make(Truth.class, values.toArray()));
        } catch (OutOfRange why) {
            return new TruthReading.Refused(List.of(why.getMessage() + "."));
        }
    }

    private Record single(String word, Record plain) {
        var block = lines.blocks.get(word);
        return block == null ? plain : part(block, plain);
    }

    private Object several(RecordComponent component, Object plain) {
        var list = list(component.getName());
        var found = new ArrayList<Record>();
        for (var block : lines.blocks.values()) {
            if (block.section().startsWith(list.word() + " ")) {
                var base = list.plain();
                var labelled = list.labelled();
                if (labelled != null && !block.cells().containsKey(labelled)) {
                    var label = block.section().substring(list.word().length()).strip();
                    block.cells().put(labelled, new TruthLines.Cell(label, block.line()));
                }
                found.add(part(block, base));
            }
        }
        if (lines.none.containsKey(list.word())) {
            used.add(list.word());
            return List.of();
        }
        return found.isEmpty() ? plain : found;
    }

    private Record part(TruthLines.Block block, Record plain) {
        used.add(block.section());
        var keys =
                Components.names(plain.getClass()).stream().map(TruthText::key).toList();
        block.cells().forEach((key, cell) -> {
            if (!keys.contains(key)) {
                mistakes.add("Line " + cell.line() + ": " + block.section() + " has no key \"" + key + "\". It has "
                        + String.join(", ", keys) + ".");
            }
        });
        var values = new ArrayList<>();
        int before = mistakes.size();
        for (var component : plain.getClass().getRecordComponents()) {
            var cell = block.cells().get(key(component.getName()));
            values.add(Components.value(plain, component.getName()));
            if (cell != null) {
                try {
                    values.set(values.size() - 1, TruthValues.read(component.getGenericType(), cell.text()));
                } catch (OutOfRange why) {
                    mistakes.add("Line " + cell.line() + ", " + block.section() + " / " + key(component.getName())
                            + ": " + why.getMessage() + ".");
                }
            }
        }
        if (mistakes.size() > before) {
            return plain;
        }
        try {
            return Components.make(plain.getClass(), values.toArray());
        } catch (OutOfRange why) {
            mistakes.add("Line " + lineOf(block, why) + ", " + block.section() + ": " + why.getMessage() + ".");
            return plain;
        }
    }

    /** A record's own message begins with the key. */
    private static int lineOf(TruthLines.Block block, OutOfRange why) {
        var first = String.valueOf(why.getMessage()).split(" ", 2)[0];
        var cell = block.cells().get(first);
        return cell == null ? block.line() : cell.line();
    }

    private static ListPart list(String component) {
        return ListPart.ALL.stream()
                .filter(l -> l.component().equals(component))
                .findFirst()
                .orElseThrow();
    }

    private static String sections() {
        return java.util.Arrays.stream(Truth.class.getRecordComponents())
                .map(c -> ListPart.ALL.stream()
                        .filter(l -> l.component().equals(c.getName()))
                        .map(l -> l.word() + " NAME")
                        .findFirst()
                        .orElse(words(c.getName())))
                .collect(Collectors.joining(", "));
    }

    /** layPct: lay_pct. */
    private static String key(String component) {
        return component.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }

    /** eggRoom: egg room. */
    private static String words(String component) {
        return key(component).replace('_', ' ');
    }
}
