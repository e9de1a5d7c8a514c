package eggwright.sheet.season;

import eggwright.book.store.Offered;
import eggwright.sheet.problem.Problem;
import java.util.List;

/** What came of reading a season file. */
public sealed interface SeasonRead {
    /**
     * Every row can be taken into the book.
     *
     * @param offered those of new rows, to be appended all or none, in the order in which they happened; empty where the
     *     book holds every row
     * @param newRows rows that the book does not hold yet
     * @param knownRows rows that it holds already
     */
    record Entries(List<Offered> offered, List<Warning> warnings, int newRows, int knownRows) implements SeasonRead {
        public Entries {
            offered = List.copyOf(offered);
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * Nothing of the file may be taken.
     *
     * @param problems at least one, at most {@link eggwright.sheet.problem.Problems#MOST}, in the order of the rows
     * @param beyond how many more there are
     */
    record Refused(List<Problem> problems, int beyond) implements SeasonRead {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
