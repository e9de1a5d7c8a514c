package eggwright.today.schedule;

import eggwright.book.name.SetName;
import eggwright.book.picture.FarmPicture;
import eggwright.book.picture.Habits;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.SetPicture;
import eggwright.trade.Species;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The dates of one set, for each species in it.
 *
 * @param bySpecies in the order of {@link Species}
 */
public record Schedule(SetName set, List<SpeciesSchedule> bySpecies) {
    public Schedule {
        bySpecies = List.copyOf(bySpecies);
    }

    /** In the farm's own zone; where it noted none, at the offset that the set was noted with. */
    public static Schedule of(SetPicture set, FarmPicture farm) {
        var zone = FarmZone.of(farm, set.startedAt().getOffset());
        return new Schedule(
                set.name(),
                dates(set.species(), set.startedAt().atZoneSameInstant(zone), FarmProfiles.of(farm), farm.habits()));
    }

    /**
     * The dates of one load, by the species in it. A tray that was only filled by pooling has the species of its set,
     * and the day 0 of the eggs that it was filled from.
     */
    public static List<SpeciesSchedule> of(
            LoadPicture load, SetPicture set, FarmProfiles profiles, Habits habits, ZoneId zone) {
        var own = new TreeSet<Species>();
        for (var parcel : load.parcels()) {
            own.add(parcel.lot().species());
        }
        var start = set.startedAt().atZoneSameInstant(zone);
        if (!load.setOn().equals(set.setOn())) {
            start = FarmZone.sameHour(start, load.setOn());
        }
        return dates(own.isEmpty() ? set.species() : own, start, profiles, habits);
    }

    private static List<SpeciesSchedule> dates(
            SortedSet<Species> species, ZonedDateTime start, FarmProfiles profiles, Habits habits) {
        return species.stream()
                .map(s -> SpeciesSchedule.of(profiles.of(s), start, habits))
                .toList();
    }
}
