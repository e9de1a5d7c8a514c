package eggwright.rates.candler;

import eggwright.book.fold.Effective;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateSort;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.Picture;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** Which clears each look of one account missed, as far as opened eggs tell. */
final class Misses {
    private final Picture picture;
    private final AccountTable table;
    private final Occasions occasions;

    Misses(Picture picture, AccountTable table, Occasions occasions) {
        this.picture = picture;
        this.table = table;
        this.occasions = occasions;
    }

    /** Why the misses of a look are not known; empty where they are. */
    Optional<NotTold> whyNot(OneLook look) {
        if (look.seen() < look.held() || look.held() != stillThere(look)) {
            return Optional.of(NotTold.NOT_ALL_EGGS);
        }
        if (look.leftClearsIn()) {
            return Optional.of(NotTold.CLEARS_LEFT_IN);
        }
        if (has(look, FateSort.STILL_IN)) {
            return Optional.of(NotTold.STILL_IN);
        }
        return has(look, FateSort.UNACCOUNTED) ? Optional.of(NotTold.NOT_OPENED_AT_THE_END) : Optional.empty();
    }

    private boolean has(OneLook look, FateSort sort) {
        for (var count : table.fates()) {
            if (count.fate().sort() == sort && count.of().meets(look.of())) {
                return true;
            }
        }
        return false;
    }

    /** Eggs of the look's parcels that were in when it was made; -1 where counts before it spoke of other parcels too. */
    private int stillThere(OneLook look) {
        int there = table.parcels(look.of()).mapToInt(Parcel::eggs).sum();
        for (var count : table.atTheLamp()) {
            if (!count.of().meets(look.of()) || isAfter(count, look)) {
                continue;
            }
            if (!look.of().hold(count.of())) {
                return -1;
            }
            there -= count.eggs();
        }
        return there;
    }

    /** Whether a count was made at the look or later; eggs still in always are. */
    private static boolean isAfter(AccountTable.Count count, OneLook look) {
        return count.by().isEmpty() || count.by().get().compareTo(look.entry()) >= 0;
    }

    /** Adds what a round of told looks missed to its person's sum. */
    void addTo(PersonSum sum, Round round) {
        for (var opening : occasions.openings()) {
            int infertile = opening.named(Fate.INFERTILE);
            if (infertile == 0 || !round.of().meets(opening.of()) || !round.isBefore(opening.entry(), opening.of())) {
                continue;
            }
            boolean mine = round.of().hold(opening.of());
            switch (opening.from()) {
                case Opening.From.Clears clears -> {
                    if (mine && clears.allAt(round::isBefore)) {
                        add(sum, round, opening, infertile);
                    } else if (clears.of().stream().anyMatch(round::isBefore)) {
                        sum.undecided += infertile;
                    }
                }
                case Opening.From.LeftIn left -> {
                    if (mine) {
                        add(sum, round, opening, infertile);
                    } else {
                        sum.undecided += infertile;
                    }
                }
                case Opening.From.Together together -> sum.undecided += infertile;
            }
        }
        for (var later : occasions.looks()) {
            if (round.isBefore(later)) {
                sum.undecided += occasions.unopened(later);
            }
        }
        for (var count : table.fates()) {
            if (count.fate() == Fate.REMOVED_UNSORTED && isAfter(count, round)) {
                sum.undecided += count.eggs();
            }
        }
    }

    private static boolean isAfter(AccountTable.Count count, Round round) {
        return count.of().meets(round.of())
                && round.looks().stream().allMatch(look -> !look.of().meets(count.of()) || isAfter(count, look));
    }

    private void add(PersonSum sum, Round round, Opening opening, int infertile) {
        sum.missed += infertile;
        var next = occasions.looks().stream()
                .filter(later -> later.of().meets(opening.of())
                        && round.isBefore(later)
                        && later.entry().compareTo(opening.entry()) < 0)
                .map(OneLook::on)
                .min(LocalDate::compareTo);
        var until = next.orElseGet(() -> leftOn(opening));
        sum.eggDays += infertile * Math.max(0, ChronoUnit.DAYS.between(round.on(), until));
        if (next.isEmpty() && table.parcels(opening.of()).anyMatch(this::wasTransferred)) {
            sum.hatcherPlaces += infertile;
        }
    }

    /** When these eggs left the machine: at the last pull, or when they were opened. */
    private LocalDate leftOn(Opening opening) {
        var opened = opening.entry().at().toLocalDate();
        return table.atTheLamp().stream()
                .filter(count -> count.fate() == Fate.UNACCOUNTED || count.fate() == Fate.PIPPED_ALIVE_LEFT)
                .filter(count -> count.of().meets(opening.of()))
                .flatMap(count -> count.by().stream())
                .map((Effective pull) -> pull.at().toLocalDate())
                .filter(at -> !at.isAfter(opened))
                .max(LocalDate::compareTo)
                .orElse(opened);
    }

    private boolean wasTransferred(Parcel parcel) {
        var set = parcel.id().load().set();
        return picture.set(set)
                .flatMap(of -> of.load(parcel.id().load().tray()))
                .filter(load -> load.transferredAt() != null)
                .isPresent();
    }
}
