package eggwright.book.fold;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.EggsMoved;
import eggwright.book.entry.EggsSet;
import eggwright.book.entry.LoadPlaced;
import eggwright.book.entry.Looked;
import eggwright.book.entry.SecondLookAsked;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.Transferred;
import eggwright.book.entry.Weighed;
import eggwright.book.picture.EggAccount;

/**
 * Folds one set, or several whose eggs were pooled, from setting to break-out. Settings are taken first whatever their
 * time, so that a count from before the set finds its trays and is shown as a discrepancy rather than lost.
 */
final class SetFold {
    private final Whereabouts where = new Whereabouts();
    private final Doubts doubts = new Doubts();
    private final SetStories stories = new SetStories();
    private final Loads loads = new Loads(doubts, stories);
    private final Setting setting = new Setting(loads, where, stories, doubts);
    private final Looking looking;
    private final Moving moving;
    private final Transferring transferring;
    private final TakingOff takingOff;
    private final BreakingOut breakingOut;

    private SetFold() {
        var pools = new Pools(where);
        var opening = new Opening(where);
        looking = new Looking(loads, pools, doubts);
        moving = new Moving(loads, pools, stories, doubts);
        transferring = new Transferring(loads, pools, doubts);
        takingOff = new TakingOff(loads, pools, opening, stories, doubts);
        breakingOut = new BreakingOut(loads, pools, opening, doubts);
    }

    /** @param entries in the order of the fold */
    static SetGroup fold(Iterable<Effective> entries) {
        var fold = new SetFold();
        for (var entry : entries) {
            if (entry.payload() instanceof EggsSet it) {
                fold.setting.set(entry, it);
            }
        }
        for (var entry : entries) {
            fold.take(entry);
        }
        return fold.picture();
    }

    private SetGroup picture() {
        var account = new EggAccount(where.parcels(), where.fates(), where.atTheLamp(), looking.looks());
        return new SetGroup(stories.pictures(loads.all(), where.pools(), account), account, doubts.found());
    }

    private void take(Effective entry) {
        switch (entry.payload()) {
            case EggsSet it -> stories.mention(it.set(), entry);
            case Looked it -> looking.look(entry, it);
            case SecondLookAsked it -> looking.askAgain(entry, it);
            case EggsMoved it -> moving.move(entry, it);
            case LoadPlaced it -> moving.place(entry, it);
            case Weighed it -> moving.weigh(entry, it);
            case Transferred it -> transferring.transfer(entry, it);
            case TakenOff it -> takingOff.takeOff(entry, it);
            case BrokenOut it -> breakingOut.breakOut(entry, it);
            default -> {
                // No other kind touches a set.
            }
        }
    }
}
