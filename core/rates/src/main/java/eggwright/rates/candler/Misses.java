package eggwright.rates.candler;

import eggwright.book.fold.Effective;
import eggwright.book.name.EntryId;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.FateSort;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.ParcelId;
import eggwright.book.picture.Picture;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which clears each look of one account missed, as far as opened eggs tell. */
final class Misses {
    private final Picture picture;
    private final EggAccount account;
    private final Map<EntryId, Effective> entries;
    private final Occasions occasions;

    Misses(Picture picture, EggAccount account, Map<EntryId, Effective> entries, Occasions occasions) {
        this.picture = picture;
        this.account = account;
        this.entries = entries;
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
        return account.fates().stream()
                .anyMatch(f -> f.fate().sort() == sort && f.eggs() > 0 && look.speaksOf(Set.copyOf(f.of().ids())));
    }

    /** Eggs of the look's parcels that were in when it was made; -1 where counts before it spoke of other parcels too. */
    private int stillThere(OneLook look) {
        int there = occasions.parcels(look.of()).mapToInt(Parcel::eggs).sum();
        for (var count : account.atTheLamp()) {
            if (isAfter(count, look)) {
                continue;
            }
            var of = count.of().ids();
            if (look.of().containsAll(of)) {
                there -= count.eggs();
            } else if (look.speaksOf(Set.copyOf(of))) {
                return -1;
            }
        }
        return there;
    }

    /** Whether a count was made at the look or later; eggs still in always are. */
    private boolean isAfter(FateCount count, OneLook look) {
        return entry(count).filter(by -> by.compareTo(look.entry()) < 0).isEmpty();
    }

    /** Adds what a round of told looks missed to its person's sum. */
    void addTo(PersonSum sum, Round round) {
        for (var opening : occasions.openings()) {
            int infertile = opening.named(Fate.INFERTILE);
            if (infertile == 0 || !round.speaksOf(opening.of()) || !round.isBefore(opening.entry(), opening.of())) {
                continue;
            }
            boolean mine = round.of().containsAll(opening.of());
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
            if (round.isBefore(later) && round.speaksOf(later.of())) {
                sum.undecided += occasions.unopened(later);
            }
        }
        sum.undecided += account.fates().stream()
                .filter(f -> f.fate() == Fate.REMOVED_UNSORTED && isAfter(f, round))
                .mapToInt(FateCount::eggs)
                .sum();
    }

    private boolean isAfter(FateCount count, Round round) {
        var of = Set.copyOf(count.of().ids());
        return round.speaksOf(of)
                && round.looks().stream().allMatch(look -> !look.speaksOf(of) || isAfter(count, look));
    }

    private void add(PersonSum sum, Round round, Opening opening, int infertile) {
        sum.missed += infertile;
        var next = occasions.looks().stream()
                .filter(later -> round.isBefore(later)
                        && later.entry().compareTo(opening.entry()) < 0
                        && later.speaksOf(opening.of()))
                .map(OneLook::on)
                .min(LocalDate::compareTo);
        var until = next.orElseGet(() -> leftOn(opening));
        sum.eggDays += infertile * Math.max(0, ChronoUnit.DAYS.between(round.on(), until));
        if (next.isEmpty() && opening.of().stream().anyMatch(this::wasTransferred)) {
            sum.hatcherPlaces += infertile;
        }
    }

    /** When these eggs left the machine: at the last pull, or when they were opened. */
    private LocalDate leftOn(Opening opening) {
        var opened = opening.entry().at().toLocalDate();
        return account.atTheLamp().stream()
                .filter(f -> f.fate() == Fate.UNACCOUNTED || f.fate() == Fate.PIPPED_ALIVE_LEFT)
                .filter(f -> f.of().ids().stream().anyMatch(opening.of()::contains))
                .flatMap(f -> entry(f).stream())
                .map(pull -> pull.at().toLocalDate())
                .filter(at -> !at.isAfter(opened))
                .max(LocalDate::compareTo)
                .orElse(opened);
    }

    private Optional<Effective> entry(FateCount count) {
        return count.by() == null ? Optional.empty() : Optional.ofNullable(entries.get(count.by()));
    }

    private boolean wasTransferred(ParcelId id) {
        return picture.set(id.load().set())
                .flatMap(set -> set.load(id.load().tray()))
                .filter(load -> load.transferredAt() != null)
                .isPresent();
    }
}
