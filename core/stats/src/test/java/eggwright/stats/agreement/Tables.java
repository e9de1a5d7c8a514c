package eggwright.stats.agreement;

import eggwright.stats.ReferenceTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Makes tables for tests: from rows of counts, or from a kept case. */
final class Tables {
    private Tables() {}

    static AgreementTable of(long[]... rows) {
        var names = new ArrayList<String>();
        for (int i = 0; i < rows.length; i++) {
            names.add("c" + (i + 1));
        }
        return new AgreementTable(
                names,
                Arrays.stream(rows)
                        .map(row -> Arrays.stream(row).boxed().toList())
                        .toList());
    }

    /** A case of kappa_cohen.csv: rater a's word is the row. */
    static AgreementTable kept(List<ReferenceTable.Row> cells) {
        var names = cells.stream().map(c -> c.text("rater_a")).distinct().toList();
        var counts = names.stream()
                .map(row -> names.stream()
                        .map(column -> cells.stream()
                                .filter(c -> c.text("rater_a").equals(row)
                                        && c.text("rater_b").equals(column))
                                .findFirst()
                                .orElseThrow()
                                .count("count"))
                        .toList())
                .toList();
        return new AgreementTable(names, counts);
    }
}
