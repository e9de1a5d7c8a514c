package eggwright.desk.today;

import eggwright.desk.part.CautionShown;
import java.util.List;

/**
 * The day at a glance.
 *
 * @param lead how much there is to do, in one sentence
 * @param doubts words of the link to what wants settling; empty where nothing does
 * @param parts work of today, most urgent first
 * @param coming the days to come on which there is work
 * @param gaps what the book was never told
 */
public record TodayPage(
        String title,
        String lead,
        String doubts,
        List<Part> parts,
        List<Day> coming,
        List<Link> gaps,
        Eggs eggs,
        List<Running> running) {
    public TodayPage {
        parts = List.copyOf(parts);
        coming = List.copyOf(coming);
        gaps = List.copyOf(gaps);
        running = List.copyOf(running);
    }

    /** Work of one urgency, with the cautions that belong to it. */
    public record Part(String title, List<Line> lines, List<CautionShown> cautions) {
        public Part {
            lines = List.copyOf(lines);
            cautions = List.copyOf(cautions);
        }
    }

    /** A day to come: its work in a few words, and line by line behind one touch. */
    public record Day(String title, String brief, List<Line> lines, List<CautionShown> cautions) {
        public Day {
            lines = List.copyOf(lines);
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * One piece of work, as a sentence with a verb.
     *
     * @param path the place where it is noted when done
     * @param mark words that set it apart, as "still possible"; empty for most
     * @param aside what belongs to it and is quickly said; empty for most
     * @param more words of the touch that unfolds it
     */
    public record Line(String path, String text, String mark, String aside, String more, List<Detail> details) {
        public Line {
            details = List.copyOf(details);
        }
    }

    /** One shelf, machine or lot of a piece of work; its text may lead somewhere, and links may follow it. */
    public record Detail(String text, List<Link> links) {
        public Detail {
            links = List.copyOf(links);
        }
    }

    public record Link(String path, String text) {}

    /**
     * What waits in the egg room.
     *
     * @param text how many, or that none do
     * @param ages by age, which to set first at the top
     */
    public record Eggs(String text, List<Age> ages) {
        public Eggs {
            ages = List.copyOf(ages);
        }
    }

    /**
     * Eggs of one age.
     *
     * @param pens how many of which
     * @param mark how the age stands to the advice; empty where it is within
     */
    public record Age(String age, String eggs, String pens, String mark) {}

    /** A set in the machines. */
    public record Running(String path, String set, String day, String eggs, String chicks) {}
}
