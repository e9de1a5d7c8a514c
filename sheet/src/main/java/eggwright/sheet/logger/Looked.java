package eggwright.sheet.logger;

import eggwright.sheet.problem.Problem;
import java.util.List;
import java.util.Map;

/** What came of looking at a logger's file, before anything of it is kept. */
public sealed interface Looked {
    /**
     * It can be read.
     *
     * @param header names of the columns, as in the file; letters where it names none
     * @param headerRow the row that names them; 0 where none does
     * @param columns what each holds
     * @param form how times are written
     * @param some the first rows, as they stand, to be shown before a person says yes
     * @param notes sentences on what was taken for granted
     */
    record Seen(
            String file,
            List<String> header,
            int headerRow,
            LoggerColumns columns,
            TimeForm form,
            List<List<String>> some,
            List<String> notes)
            implements Looked {
        public Seen {
            header = List.copyOf(header);
            some = List.copyOf(some);
            notes = List.copyOf(notes);
        }
    }

    /**
     * It cannot be read without a person's word.
     *
     * @param header names of the columns, as in the file; empty where it has no rows that can be told
     * @param columns what each is taken for so far
     * @param some the first rows, as they stand
     */
    record InDoubt(List<Problem> questions, List<String> header, LoggerColumns columns, List<List<String>> some)
            implements Looked {
        public InDoubt {
            questions = List.copyOf(questions);
            header = List.copyOf(header);
            some = List.copyOf(some);
        }

        /** Nothing of it could be seen. */
        static InDoubt unseen(List<Problem> questions) {
            return new InDoubt(questions, List.of(), new LoggerColumns(Map.of()), List.of());
        }
    }
}
