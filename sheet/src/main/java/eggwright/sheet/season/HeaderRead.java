package eggwright.sheet.season;

import eggwright.sheet.problem.Near;
import eggwright.sheet.problem.Problems;
import eggwright.sheet.table.Table;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Which column of the table is which; capitals do not matter. */
final class HeaderRead {
    private HeaderRead() {}

    static Map<SeasonColumn, Integer> places(Table table, Problems problems) {
        var places = new EnumMap<SeasonColumn, Integer>(SeasonColumn.class);
        for (int i = 0; i < table.header().size(); i++) {
            var typed = table.header().get(i);
            var column = SeasonColumn.ofWord(typed.toLowerCase(Locale.ROOT));
            var before = column.map(places::get);
            if (column.isEmpty()) {
                problems.add(1, typed, null, "a season has no column of this name", unknown(typed));
            } else if (before.isPresent()) {
                problems.add(
                        1,
                        typed,
                        null,
                        "stands twice, as columns " + Table.letters(before.get()) + " and " + Table.letters(i),
                        "Keep one of them.");
            } else {
                places.put(column.get(), i);
            }
        }
        var missing = SeasonColumn.REQUIRED.stream()
                .filter(c -> !places.containsKey(c))
                .toList();
        if (!missing.isEmpty()) {
            problems.add(
                    1,
                    null,
                    null,
                    "the header lacks "
                            + missing.stream().map(SeasonColumn::word).collect(Collectors.joining(", ")),
                    "Every season names " + SeasonColumn.words(SeasonColumn.REQUIRED) + ".");
        }
        return places;
    }

    private static String unknown(String typed) {
        return Near.to(typed.toLowerCase(Locale.ROOT).replace(' ', '_'), SeasonColumn.words())
                .map(near -> "Did you mean \"" + near + "\"?")
                .orElseGet(() -> "The columns are " + String.join(", ", SeasonColumn.words()) + ".");
    }
}
