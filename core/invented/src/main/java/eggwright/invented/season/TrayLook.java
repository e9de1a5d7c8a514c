package eggwright.invented.season;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Scope;
import eggwright.book.name.EntryId;
import eggwright.invented.chance.Draw;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/** One look at one tray: what the eye takes each egg for, what is taken out, and what of it is opened. */
final class TrayLook {
    /** Before this day a live egg taken for a bad one is taken for a clear. */
    private static final int DARK_FROM_DAY = 11;

    private final Farm farm;
    private final Batch batch;
    private final Load load;
    private final int day;
    private final RandomGenerator random;
    private final double mistakes;
    private final Map<Finding, Integer> seen = new EnumMap<>(Finding.class);
    private final List<Egg> clears = new ArrayList<>();
    private int toOpen;
    private @Nullable EntryId noted;

    TrayLook(Farm farm, Batch batch, Load load, LocalDate on) {
        this.farm = farm;
        this.batch = batch;
        this.load = load;
        this.day = batch.day(on);
        this.random = farm.streams.of("lamp", load.set, load.tray, day);
        var lamp = farm.truth.lamp();
        boolean careless = Draw.chance(farm.streams.of("careless", on), lamp.carelessPct() / 100);
        this.mistakes = careless ? lamp.carelessTimes() / 100 : 1 / 100.0;
    }

    void note(ZonedDateTime at) {
        var before = load.inside.size();
        var stays = new ArrayList<Egg>();
        for (var egg : load.inside) {
            var taken = takenFor(egg);
            seen.merge(taken, 1, Integer::sum);
            switch (taken) {
                case LIVE, DOUBTFUL, WRONG_END_UP -> stays.add(egg);
                case CLEAR -> {
                    egg.takenOutOn(day);
                    clears.add(egg);
                }
                case BLOOD_RING, DEAD, CRACKED, ROT -> egg.takenOutOn(day);
            }
        }
        load.inside = stays;
        boolean sorted = !Draw.chance(random, farm.truth.lamp().unsortedPct() / 100);
        toOpen = sorted ? Draw.binomial(random, clears.size(), farm.truth.lamp().openedClearsPct() / 100) : 0;
        // Eggs are opened as they come to hand.
        java.util.Collections.shuffle(clears, random);
        var look = new Looked(
                Scope.ofLoad(load.set, load.tray),
                null,
                Draw.chance(random, 0.25) ? before : null,
                findings(sorted),
                sorted ? 0 : seen(Finding.CLEAR) + seen(Finding.BLOOD_RING),
                Draw.between(random, 3, 6));
        noted = farm.notebook.noteCount(at, look);
        if (before == load.eggs.size()) {
            batch.firstLooks.add(noted);
        }
    }

    private Finding takenFor(Egg egg) {
        var lamp = farm.truth.lamp();
        double u = random.nextDouble();
        var shows = egg.showsOn(day);
        return switch (shows) {
            case CLEAR -> u < lamp.missedClearPct() * mistakes ? Finding.LIVE : shows;
            case BLOOD_RING, DEAD -> u < lamp.missedDeadPct() * mistakes ? Finding.LIVE : shows;
            case LIVE -> {
                double pulled = lamp.livePulledPct() * mistakes;
                if (u < pulled) {
                    yield day < DARK_FROM_DAY ? Finding.CLEAR : Finding.DEAD;
                }
                yield u < pulled + lamp.doubtfulPct() / 100 ? Finding.DOUBTFUL : shows;
            }
            case CRACKED, ROT, DOUBTFUL, WRONG_END_UP -> shows;
        };
    }

    private List<FindingCount> findings(boolean sorted) {
        var found = new ArrayList<FindingCount>();
        for (var finding : Finding.values()) {
            int count = seen(finding);
            if (count > 0) {
                switch (finding) {
                    case CLEAR -> {
                        if (sorted) {
                            found.add(new FindingCount(finding, count, count - toOpen, toOpen));
                        }
                    }
                    case BLOOD_RING -> {
                        if (sorted) {
                            found.add(FindingCount.removed(finding, count));
                        }
                    }
                    case DEAD, CRACKED, ROT -> found.add(FindingCount.removed(finding, count));
                    case LIVE, DOUBTFUL, WRONG_END_UP -> found.add(FindingCount.left(finding, count));
                }
            }
        }
        return found;
    }

    private int seen(Finding finding) {
        return seen.getOrDefault(finding, 0);
    }

    /** Opens the clears that were kept for it; gives whether there were any. */
    boolean open(ZonedDateTime at) {
        if (toOpen == 0 || noted == null) {
            return false;
        }
        var bird = farm.bird(load.species);
        var classes = Opened.classes(clears.subList(0, toOpen), bird);
        farm.notebook.note(
                at, new BrokenOut(Scope.ofLoad(load.set, load.tray).withLook(noted), toOpen, toOpen, classes));
        return true;
    }
}
