package eggwright.today.schedule;

import eggwright.book.picture.FarmClock;
import eggwright.book.picture.Habits;
import eggwright.trade.Species;
import eggwright.trade.SpeciesDates;
import eggwright.trade.SpeciesProfile;
import eggwright.trade.source.Source;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * When each piece of work falls due for the eggs of one species in a set.
 *
 * <p>Day n is the farm-local date n days after the set. Work that people choose the hour of (looks, last turn,
 * transfer) stands at the farm's work hour of its day, also across a change of the clocks; what the eggs do (first pip,
 * hatch) and the take-off stand at the hour that follows from the hour of the set ({@link SpeciesDates}).
 *
 * <p>Days of candling: the farm's own figure for the species; else the farm's habit; else the custom of the species.
 * Days after the transfer are left out. A look counts for day n from two days before to two days after it, but never
 * for two such days (common practice of "day 7 or 8", no source for the width).
 *
 * @param profile the species as this farm keeps it, each figure with its source
 * @param set when the eggs went into the heat
 */
public record SpeciesSchedule(
        SpeciesProfile profile,
        ZonedDateTime set,
        LooksBy looksBy,
        List<LookDay> looks,
        ZonedDateTime lastTurn,
        ZonedDateTime transfer,
        ZonedDateTime firstPip,
        ZonedDateTime hatchFrom,
        ZonedDateTime hatchTo,
        ZonedDateTime takeOff) {
    /** How many days early or late a look still counts for its day. */
    public static final int LOOK_DAYS_AROUND = 2;

    public SpeciesSchedule {
        looks = List.copyOf(looks);
    }

    /**
     * @param set when the eggs went into the heat, in the farm's own zone
     */
    public static SpeciesSchedule of(SpeciesProfile profile, ZonedDateTime set, Habits habits) {
        var dates = SpeciesDates.of(profile, set);
        var by = looksBy(profile, habits);
        return new SpeciesSchedule(
                profile,
                set,
                by,
                looks(profile, set, habits, by),
                atWork(dates.lastTurn(), habits),
                atWork(dates.transfer(), habits),
                dates.firstPip(),
                dates.hatchFrom(),
                dates.hatchTo(),
                dates.takeOff());
    }

    public Species species() {
        return profile.species();
    }

    /** Which day of incubation a farm-local date is; below 0 before the set. */
    public int dayOf(LocalDate date) {
        return FarmClock.day(set.toLocalDate(), date);
    }

    private static ZonedDateTime atWork(ZonedDateTime day, Habits habits) {
        return ZonedDateTime.of(day.toLocalDate(), habits.workHour(), day.getZone());
    }

    private static LooksBy looksBy(SpeciesProfile profile, Habits habits) {
        var ownFigure = profile.candlingDays().source() instanceof Source.FarmOverride;
        return habits.candlingDays() == null || ownFigure ? LooksBy.SPECIES : LooksBy.FARM_HABIT;
    }

    private static List<LookDay> looks(SpeciesProfile profile, ZonedDateTime set, Habits habits, LooksBy by) {
        var habit = habits.candlingDays();
        var custom =
                by == LooksBy.SPECIES || habit == null ? profile.candlingDays().value() : habit;
        double transfer = profile.transferDay().value();
        var days =
                custom.stream().distinct().sorted().filter(n -> n <= transfer).toList();
        var looks = new ArrayList<LookDay>();
        for (int i = 0; i < days.size(); i++) {
            int day = days.get(i);
            int first = i == 0
                    ? day - LOOK_DAYS_AROUND
                    : Math.max(day - LOOK_DAYS_AROUND, looks.getLast().lastDay() + 1);
            int last = i + 1 == days.size()
                    ? day + LOOK_DAYS_AROUND
                    : Math.min(day + LOOK_DAYS_AROUND, days.get(i + 1) - 1);
            looks.add(new LookDay(day, atWork(set.plusDays(day), habits), Math.max(1, first), last));
        }
        return looks;
    }
}
