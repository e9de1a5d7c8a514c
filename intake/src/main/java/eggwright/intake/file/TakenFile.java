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

    /** What is odd among the readings of a file. */
    sealed interface Odd {
        /**
         * @param heldBack of all readings between the first and the last of the file: kept, but not believed
         * @param firstHeld the first of these
         * @param gaps silences between them
         */
        record Counted(long heldBack, List<HeldBack> firstHeld, long gaps) implements Odd {
            public Counted {
                firstHeld = List.copyOf(firstHeld);
            }
        }

        /** The readings are kept, but reading them again failed. */
        record NotCounted() implements Odd {}
    }

    /**
     * All of it is kept.
     *
     * @param fresh readings that are new
     * @param known readings that were known already, or stand twice in the file
     * @param empty cells in which the sensor gave nothing
     * @param odd what is odd among them
     * @param columns as they were read, in words
     */
    record Kept(
            long rows,
            long fresh,
            long known,
            long empty,
            Odd odd,
            Instant first,
            Instant last,
            String columns,
            List<Channel> channels)
            implements TakenFile {
        public Kept {
            channels = List.copyOf(channels);
        }

        /** @throws IllegalStateException if it was not counted; all is kept nevertheless */
        public long heldBack() {
            return counted().heldBack();
        }

        /** @throws IllegalStateException if it was not counted; all is kept nevertheless */
        public long gaps() {
            return counted().gaps();
        }

        private Odd.Counted counted() {
            if (odd instanceof Odd.Counted counted) {
                return counted;
            }
            throw new IllegalStateException(
                    "All readings are kept. How many of them are held back could not be counted.");
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
