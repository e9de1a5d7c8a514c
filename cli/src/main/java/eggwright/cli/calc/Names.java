package eggwright.cli.calc;

import eggwright.cli.csv.ColumnTable;
import eggwright.units.Rate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Reads what the commands over counts share: names with commas between, and successes of trials. */
final class Names {
    private static final int MOST_TRIALS = 100_000_000;

    private Names() {}

    /** The names that an option lists, none where it is not given. */
    static List<String> listed(Given given, String option) {
        return given.text(option).map(text -> split(given, option, text)).orElse(List.of());
    }

    static List<String> split(Given given, String option, String text) {
        var names = Arrays.stream(text.split(",", -1)).map(String::strip).toList();
        var seen = new ArrayList<String>();
        for (var name : names) {
            if (name.isEmpty()) {
                throw given.wrong(option, "a name is missing beside a comma in \"" + text + "\".");
            }
            if (seen.contains(name)) {
                throw given.wrong(option, "\"" + name + "\" is named twice. Name it once.");
            }
            seen.add(name);
        }
        return names;
    }

    /** The rows' counts; without trials each row is one trial. */
    static List<Rate> rates(ColumnTable table, String successes, List<String> trials) {
        int[] yes = table.column(successes).wholes(MOST_TRIALS);
        int[] all = trials.isEmpty()
                ? ones(yes.length)
                : table.column(trials.getFirst()).wholes(MOST_TRIALS);
        var rates = new ArrayList<Rate>(yes.length);
        for (int row = 0; row < yes.length; row++) {
            if (yes[row] > all[row]) {
                throw table.refused("counts " + yes[row] + " successes of " + all[row] + " in row " + table.line(row)
                        + (trials.isEmpty()
                                ? ". Without --trials each row is one trial, 0 or 1."
                                : ". There cannot be more than all."));
            }
            rates.add(new Rate(yes[row], all[row]));
        }
        return rates;
    }

    private static int[] ones(int rows) {
        int[] ones = new int[rows];
        Arrays.fill(ones, 1);
        return ones;
    }
}
