package eggwright.book.entry;

import eggwright.units.OutOfRange;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Eggs were opened and named. It renames fates already counted; it never adds eggs.
 *
 * @param opened every egg opened, clears among them
 * @param clearsOpened how many of them were clears at the lamp; absent: the lesser of the clears there are and those opened
 */
public record BrokenOut(Scope scope, int opened, @Nullable Integer clearsOpened, List<ClassCount> classes)
        implements Payload {
    public BrokenOut {
        Checks.count("Opened", opened);
        classes = List.copyOf(classes);
        int named = classes.stream().mapToInt(ClassCount::eggs).sum();
        if (named > opened) {
            throw new OutOfRange(
                    EntryReason.MORE_CLASSED_THAN_OPENED,
                    "The classes name " + named + " eggs but " + opened + " were opened.",
                    named,
                    opened);
        }
        if (clearsOpened != null && !(clearsOpened >= 0 && clearsOpened <= opened)) {
            throw new OutOfRange(
                    EntryReason.MORE_CLEARS_THAN_OPENED,
                    "Of " + opened + " opened eggs " + clearsOpened + " cannot have been clears.",
                    clearsOpened,
                    opened);
        }
    }

    public int named(eggwright.trade.BreakOutClass what) {
        return classes.stream()
                .filter(c -> c.what() == what)
                .mapToInt(ClassCount::eggs)
                .sum();
    }
}
