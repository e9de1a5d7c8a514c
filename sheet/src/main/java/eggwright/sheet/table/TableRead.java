package eggwright.sheet.table;

import eggwright.sheet.problem.Problem;
import java.util.List;

/** What came of reading a file as a table. */
public sealed interface TableRead {
    record Read(Table table) implements TableRead {}

    /**
     * The file is no table.
     *
     * @param problems at least one, at most {@link eggwright.sheet.problem.Problems#MOST}
     * @param beyond how many more there are
     */
    record Refused(List<Problem> problems, int beyond) implements TableRead {
        public Refused {
            problems = List.copyOf(problems);
        }

        static Refused of(Problem problem) {
            return new Refused(List.of(problem), 0);
        }
    }
}
