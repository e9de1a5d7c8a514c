package eggwright.climate.machine;

import eggwright.book.entry.Finding;
import eggwright.book.name.EntryId;
import eggwright.book.name.SetName;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateSort;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.LookTaken;
import eggwright.book.picture.SetPicture;
import eggwright.climate.machine.Aftermath.Told;
import eggwright.trade.Species;
import eggwright.units.Rate;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads in the book what became of sets that had a bad night. */
final class Aftermaths {
    /** What a night killed can hardly be seen before: advised is four to six days (PSU-POWER of the trade's sources). */
    private static final Duration SEEN_AFTER = Duration.ofDays(1);

    /** Looks so many days of incubation apart are compared: ours. */
    private static final int SAME_AGE_DAYS = 2;

    private final Collection<SetPicture> sets;
    private final Set<SetName> troubled;

    /** @param troubled sets that had one of the nights looked at; they are compared with the others, not with each other */
    Aftermaths(Collection<SetPicture> sets, Set<SetName> troubled) {
        this.sets = sets;
        this.troubled = troubled;
    }

    /** Empty until something was counted. */
    Optional<Aftermath> of(SetPicture set, Species species, Instant over) {
        return byLook(set, species, over).or(() -> byTakeOff(set, species, over));
    }

    private Optional<Aftermath> byLook(SetPicture set, Species species, Instant over) {
        var first = looks(set, species).values().stream()
                .filter(look -> look.at().toInstant().isAfter(over.plus(SEEN_AFTER)))
                .min(Comparator.comparing(LookTaken::at, Comparator.comparing(at -> at.toInstant())));
        return first.map(look -> {
            // Trays of one evening are one look.
            var evening = looks(set, species).values().stream()
                    .filter(other -> other.day() == look.day())
                    .toList();
            var others = sets.stream()
                    .filter(other -> !troubled.contains(other.name()))
                    .flatMap(other -> looks(other, species).values().stream())
                    .filter(other -> Math.abs(other.day() - look.day()) <= SAME_AGE_DAYS)
                    .toList();
            return new Aftermath(Told.LOOK, look.at().toInstant(), died(evening), died(others));
        });
    }

    private static Rate died(List<LookTaken> looks) {
        int died = 0;
        int lookedAt = 0;
        for (var look : looks) {
            lookedAt += look.lookedAt();
            died += Math.min(
                    look.lookedAt(),
                    look.look().seen(Finding.DEAD) + look.look().seen(Finding.BLOOD_RING));
        }
        return new Rate(died, lookedAt);
    }

    /** Each once: a look at the whole set stands with every one of its loads. Of a set of several species nobody can tell. */
    private static Map<EntryId, LookTaken> looks(SetPicture set, Species species) {
        var looks = new LinkedHashMap<EntryId, LookTaken>();
        for (var load : set.loads().values()) {
            if (Party.species(load) == species) {
                load.looks().stream()
                        .filter(look -> look.look().scope().tray() != null
                                || set.species().size() == 1)
                        .forEach(look -> looks.put(look.entry(), look));
            }
        }
        return looks;
    }

    private Optional<Aftermath> byTakeOff(SetPicture set, Species species, Instant over) {
        var off = set.takenOffAt();
        if (off == null || off.toInstant().isBefore(over) || set.species().size() > 1 || isShared(set)) {
            return Optional.empty();
        }
        var others = sets.stream()
                .filter(other -> !troubled.contains(other.name()))
                .filter(other -> other.takenOffAt() != null
                        && !isShared(other)
                        && other.species().equals(Set.of(species)))
                .toList();
        return Optional.of(
                new Aftermath(Told.TAKE_OFF, off.toInstant(), withoutChick(List.of(set)), withoutChick(others)));
    }

    /** Its account holds eggs of other sets too. */
    private static boolean isShared(SetPicture set) {
        return set.account().eggsSet()
                != set.loads().values().stream().mapToInt(LoadPicture::eggsSet).sum();
    }

    private static Rate withoutChick(List<SetPicture> sets) {
        int eggs = sets.stream().mapToInt(Aftermaths::inTheHatcher).sum();
        return new Rate(eggs - sets.stream().mapToInt(Aftermaths::chicks).sum(), eggs);
    }

    private static int chicks(SetPicture set) {
        return set.account().eggs(Fate.SALEABLE)
                + set.account().eggs(Fate.CULLED)
                + set.account().eggs(Fate.DEAD_IN_BASKET);
    }

    /** Those that nobody took out at the lamp. */
    private static int inTheHatcher(SetPicture set) {
        var account = set.account();
        int outAtTheLamp = 0;
        for (var fate : Fate.values()) {
            if (fate.sort() == FateSort.LAMP || fate == Fate.INFERTILE) {
                outAtTheLamp += account.eggs(fate);
            }
        }
        return account.eggsSet() - outAtTheLamp;
    }
}
