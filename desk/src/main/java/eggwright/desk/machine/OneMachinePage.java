package eggwright.desk.machine;

import eggwright.desk.part.CautionShown;
import eggwright.desk.part.TableShown;
import eggwright.desk.picture.LossChart;
import java.util.List;
import java.util.Optional;

/**
 * One machine: what to turn it to and why, its air, its sets, what was read.
 *
 * @param links what can be noted of it
 * @param sets oldest first
 * @param nights latest first
 */
public record OneMachinePage(
        String name,
        List<Link> links,
        Advice advice,
        Now now,
        List<SetInside> sets,
        List<BadNight> nights,
        ReadingsShown readings,
        CalculatorShown calculator,
        List<CautionShown> cautions) {
    public OneMachinePage {
        links = List.copyOf(links);
        sets = List.copyOf(sets);
        nights = List.copyOf(nights);
        cautions = List.copyOf(cautions);
    }

    public record Link(String path, String label) {}

    /** A value with its name, and how it is known; either is empty where the other says all. */
    public record Figure(String label, String value, String how) {
        static Figure of(String label, String value) {
            return new Figure(label, value, "");
        }
    }

    /**
     * What to do.
     *
     * @param headline the one thing
     * @param then what belongs to it, a sentence each
     * @param why the reasons, one for each set
     * @param together what each set gets of the one humidity; empty where there is only one
     */
    public record Advice(String headline, List<String> then, List<String> why, Optional<TableShown> together) {
        public Advice {
            then = List.copyOf(then);
            why = List.copyOf(why);
        }
    }

    /**
     * Its air.
     *
     * @param place for which altitude it is reckoned
     * @param setAltitude where to note it; empty where it is noted, or for somebody else to note
     */
    public record Now(List<Figure> figures, String place, Optional<Link> setAltitude) {
        public Now {
            figures = List.copyOf(figures);
        }
    }

    /**
     * One set in it.
     *
     * @param brief when it hatches, in a few words
     * @param picture of its loss; empty where it was not weighed twice
     */
    public record SetInside(Link link, String title, String brief, List<Figure> figures, Optional<LossChart> picture) {
        public SetInside {
            figures = List.copyOf(figures);
        }
    }

    /**
     * A bad night.
     *
     * @param brief when and how long
     * @param told what happened and what to do, a sentence each
     * @param sets what it may have cost each
     * @param sources what the losses rest on
     */
    public record BadNight(String brief, List<String> told, TableShown sets, String sources) {
        public BadNight {
            told = List.copyOf(told);
        }
    }

    /** A way to look at it. */
    public record Choice(String path, String label, Standing standing) {}

    /** Whether a choice is the one that is shown. */
    public enum Standing {
        SHOWN,
        OTHER
    }

    /** A table under its own heading; the text stands alone where there are no rows. */
    public record Table(String title, String text, TableShown rows) {}
}
