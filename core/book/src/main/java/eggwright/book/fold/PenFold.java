package eggwright.book.fold;

import eggwright.book.entry.EggsGathered;
import eggwright.book.entry.PenChange;
import eggwright.book.entry.PenChanged;
import eggwright.book.entry.PenClosed;
import eggwright.book.entry.PenOpened;
import eggwright.book.name.PenName;
import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.Discrepancy.About;
import eggwright.book.picture.Discrepancy.What.OfBirds;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.PenPicture;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Folds what is known of one pen's birds. */
final class PenFold implements PartFold<PenPicture> {
    private final PenName pen;
    private final List<PenPicture.Changed> changes = new ArrayList<>();
    private final List<Discrepancy> discrepancies = new ArrayList<>();
    private @Nullable Species species;
    private @Nullable LocalDate openedOn;
    private @Nullable LocalDate closedOn;
    private int cocks;
    private int hens;

    PenFold(PenName pen) {
        this.pen = pen;
    }

    @Override
    public Folded<PenPicture> folded() {
        return new Folded<>(new PenPicture(pen, species, cocks, hens, openedOn, closedOn, changes), discrepancies);
    }

    @Override
    public void take(Effective entry) {
        var on = entry.at().toLocalDate();
        switch (entry.payload()) {
            case PenOpened it -> {
                species = it.species();
                cocks = it.cocks();
                hens = it.hens();
                openedOn = on;
                closedOn = null;
                changes.add(new PenPicture.Changed(on, PenChange.BIRDS_IN, it.cocks(), it.hens(), it.note()));
            }
            case PenChanged it -> {
                changes.add(new PenPicture.Changed(on, it.change(), it.cocks(), it.hens(), it.why()));
                change(entry, it);
            }
            case PenClosed it -> closedOn = on;
            case EggsGathered it -> {
                if (species == null) {
                    species = it.species();
                }
            }
            default -> {
                // Other entries only name the pen.
            }
        }
    }

    private void change(Effective entry, PenChanged it) {
        switch (it.change()) {
            case BIRDS_IN -> {
                cocks += it.cocks();
                hens += it.hens();
            }
            case BIRDS_OUT, DIED -> {
                cocks = less(entry, OfBirds.COCKS, cocks, it.cocks());
                hens = less(entry, OfBirds.HENS, hens, it.hens());
            }
            case COCKS_EXCHANGED -> {
                // As many went as came; the count stands.
            }
            case COUNTED -> {
                cocks = it.cocks();
                hens = it.hens();
            }
        }
    }

    private int less(Effective entry, OfBirds birds, int held, int gone) {
        if (gone > held) {
            discrepancies.add(new Discrepancy(
                    DiscrepancyKind.PEN_SHORT, List.of(entry.id()), new About.Birds(pen), gone, held, birds));
        }
        return Math.max(0, held - gone);
    }
}
