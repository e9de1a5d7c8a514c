package eggwright.desk.ledger;

import java.util.List;
import java.util.Optional;

/**
 * The newest notes, and what wants settling.
 *
 * @param count notes in the book
 * @param doubts what does not add up
 * @param days notes by day, newest first
 * @param older where older notes are; empty at the beginning of the book
 */
public record BookPage(int count, List<Doubt> doubts, List<Day> days, Optional<String> older) {
    public BookPage {
        doubts = List.copyOf(doubts);
        days = List.copyOf(days);
    }

    /** One thing to settle. */
    public record Doubt(String text, List<Link> entries) {
        public Doubt {
            entries = List.copyOf(entries);
        }
    }

    public record Link(String path, String label) {}

    public record Day(String date, List<Line> lines) {
        public Day {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One note.
     *
     * @param state how it stands, as "mended"; empty where it counts as it was noted
     */
    public record Line(String path, String time, String text, String who, String state) {}
}
