package eggwright.today.schedule;

/** Whose custom the days of candling are. */
public enum LooksBy {
    /** The species' custom, or the farm's own figure for this species. */
    SPECIES,
    /** A habit of the farm for all its birds. */
    FARM_HABIT
}
