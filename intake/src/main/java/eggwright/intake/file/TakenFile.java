package eggwright.intake.file;

import eggwright.climate.reading.Channel;
import eggwright.climate.sensor.Held;
import eggwright.sheet.problem.Problem;
import java.time.Instant;
import java.util.List;

/** What became of a logger's file. */
public sealed interface TakenFile {
    /** So many of those that are held back can be shown. */
    int MOST_HELD_SHOWN = 20;

    /** A reading that is held back. */
    record HeldBack(Channel channel, Held what) {}

    /**
     * All of it is kept.
     *
     * @param fresh readings that are new
     * @param known readings that were known already, or stand twice in the file
     * @param empty cells in which the sensor gave nothing
     * @param heldBack of all readings between the first and the last of the file: kept, but not believed
     * @param firstHeld the first of these
     * @param gaps silences between them
     * @param columns as they were read, in words
     */
    record Kept(
            long rows,
            long fresh,
            long known,
            long empty,
            long heldBack,
            List<HeldBack> firstHeld,
            long gaps,
            Instant first,
            Instant last,
            String columns,
            List<Channel> channels)
            implements TakenFile {
        public Kept {
            firstHeld = List.copyOf(firstHeld);
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
