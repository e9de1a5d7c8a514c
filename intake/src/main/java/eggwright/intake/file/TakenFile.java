package eggwright.intake.file;

import eggwright.climate.reading.Channel;
import eggwright.sheet.problem.Problem;
import java.time.Instant;
import java.util.List;

/** What became of a logger's file. */
public sealed interface TakenFile {
    /**
     * All of it is kept.
     *
     * @param fresh readings that are new
     * @param known readings that were known already, or stand twice in the file
     * @param empty cells in which the sensor gave nothing
     * @param heldBack of all readings between the first and the last of the file: kept, but not believed
     * @param gaps silences between them
     * @param columns as they were read, in words
     */
    record Kept(
            long rows,
            long fresh,
            long known,
            long empty,
            long heldBack,
            long gaps,
            Instant first,
            Instant last,
            String columns,
            List<Channel> channels)
            implements TakenFile {
        public Kept {
            channels = List.copyOf(channels);
        }
    }

    /**
     * Nothing of it is kept.
     *
     * @param beyond how many problems there are beside those
     */
    record Refused(List<Problem> problems, int beyond) implements TakenFile {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
