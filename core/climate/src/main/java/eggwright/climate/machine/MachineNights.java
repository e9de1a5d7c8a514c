package eggwright.climate.machine;

import eggwright.book.entry.IncidentNoted;
import eggwright.book.name.MachineName;
import eggwright.book.picture.FarmPicture;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.Picture;
import eggwright.book.picture.Place;
import eggwright.climate.air.AirTelling;
import eggwright.climate.development.Warmth;
import eggwright.climate.excursion.Excursion;
import eggwright.climate.excursion.Excursions;
import eggwright.climate.excursion.NightReckoning;
import eggwright.climate.excursion.NotedNight;
import eggwright.climate.excursion.WorkingBand;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.rollup.Band;
import eggwright.climate.rollup.Cut;
import eggwright.climate.rollup.Rollup;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import eggwright.units.Temperature;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The bad nights of a machine: those that its sensors show, and those that somebody noted and no sensor saw. Where both
 * tell of one night, the readings are believed and the note stands beside them.
 */
public final class MachineNights {
    /** Where nobody measured, a hatchery's room: ours. */
    static final double ROOM_CELSIUS = 20;

    /** Where somebody noted that it was too hot, and no figure: ours. */
    static final double HOT_CELSIUS = 40;

    private static final Cut CUT = new Cut.Every(Duration.ofMinutes(10));
    private static final Duration BEFORE = Duration.ofHours(1);
    private static final Duration AFTER = Duration.ofHours(24);
    private static final double DAY_MILLIS = 86_400_000.0;

    private final Picture picture;
    private final AirTelling telling;
    private final Function<Species, SpeciesProfile> profiles;

    public MachineNights(Picture picture, AirTelling telling, Function<Species, SpeciesProfile> profiles) {
        this.picture = picture;
        this.telling = telling;
        this.profiles = profiles;
    }

    /**
     * The nights of some time, and what they are told by.
     *
     * @param nights latest first
     * @param band in which the machine works
     */
    public record Known(List<Night> nights, Band band) {
        public Known {
            nights = List.copyOf(nights);
        }
    }

    /** Latest first. */
    public List<Night> of(MachineName machine, Instant from, Instant to) {
        return known(machine, from, to).nights();
    }

    /** The nights, with the band that the machine left in them. */
    public Known known(MachineName machine, Instant from, Instant to) {
        var place = new ReadingPlace.InMachine(machine);
        var rollups = telling.temperatures(place, from, to, CUT);
        var band = band(place, from, to);
        var nights = new ArrayList<Night>();
        for (var excursion : Excursions.of(rollups, band)) {
            var noted = incidents(machine, from, to).stream()
                    .filter(note -> overlaps(note, excursion, middle(band)))
                    .map(MachineNights::text)
                    .findFirst()
                    .orElse("");
            nights.add(night(machine, excursion, Night.How.READINGS, noted, air(rollups, excursion)));
        }
        for (var note : incidents(machine, from, to)) {
            excursion(note, middle(band))
                    .filter(night -> !isCovered(night, rollups))
                    .ifPresent(night -> {
                        // What a sensor told of a part of it is no night of its own.
                        nights.removeIf(other -> overlaps(note, other.excursion(), middle(band)));
                        nights.add(night(
                                machine,
                                night,
                                how(note),
                                text(note),
                                NotedNight.air(night.from(), night.to(), night.extremeCelsius(), middle(band))));
                    });
        }
        if (hasStoodHere(machine)) {
            // A machine that stands idle between two sets is cold, and nobody in it minds.
            nights.removeIf(night -> night.sets().isEmpty());
        }
        nights.sort(Comparator.comparing((Night n) -> n.excursion().from()).reversed());
        return new Known(counted(nights), band);
    }

    /** With what the book says since. */
    private List<Night> counted(List<Night> nights) {
        var troubled = nights.stream()
                .flatMap(night -> night.sets().stream())
                .map(Night.SetNight::set)
                .collect(Collectors.toSet());
        var aftermaths = new Aftermaths(picture.sets().values(), troubled);
        return nights.stream()
                .map(night -> new Night(
                        night.excursion(),
                        night.how(),
                        night.noted(),
                        night.sets().stream()
                                .map(set -> counted(set, night.excursion().to(), aftermaths))
                                .toList()))
                .toList();
    }

    private Night.SetNight counted(Night.SetNight night, Instant over, Aftermaths aftermaths) {
        return new Night.SetNight(
                night.set(),
                night.species(),
                night.day(),
                night.cost(),
                picture.set(night.set())
                        .flatMap(set -> aftermaths.of(set, night.species(), over))
                        .orElse(null));
    }

    /** The band in which the machine works. */
    public Band band(ReadingPlace place, Instant from, Instant to) {
        return WorkingBand.of(
                telling.temperatures(place, from, to, Cut.HOUR),
                profiles.apply(Party.CUSTOM).setterTemperature().value());
    }

    /** Whether the book says of any eggs that they stood in it: where it never does, nobody notes places. */
    private boolean hasStoodHere(MachineName machine) {
        return picture.sets().values().stream()
                .flatMap(set -> set.loads().values().stream())
                .flatMap(load -> load.places().stream())
                .anyMatch(place -> machine.equals(place.machine()));
    }

    /** Whether a sensor told of half of it or more. One that hangs on the same mains falls silent with them. */
    private static boolean isCovered(Excursion night, List<Rollup> rollups) {
        var told = Duration.ZERO;
        for (var rollup : rollups) {
            if (overlaps(rollup, night)) {
                var from = rollup.from().isBefore(night.from()) ? night.from() : rollup.from();
                var to = rollup.to().isAfter(night.to()) ? night.to() : rollup.to();
                told = told.plus(Duration.between(from, to));
            }
        }
        return told.multipliedBy(2).compareTo(night.length()) >= 0;
    }

    private static double middle(Band band) {
        return (band.low() + band.high()) / 2;
    }

    private static List<Warmth> air(List<Rollup> rollups, Excursion night) {
        var from = night.from().minus(BEFORE);
        var to = night.to().plus(AFTER);
        var air = new ArrayList<Warmth>();
        for (var rollup : rollups) {
            if (!rollup.from().isBefore(from) && !rollup.to().isAfter(to)) {
                air.add(new Warmth(rollup.from(), rollup.to(), rollup.mean()));
            }
        }
        return air;
    }

    private List<FarmPicture.Note> incidents(MachineName machine, Instant from, Instant to) {
        return picture.farm().notes().stream()
                .filter(note -> note.what() instanceof IncidentNoted it
                        && (it.machine() == null || machine.equals(it.machine())))
                .filter(note -> !note.at().toInstant().isBefore(from)
                        && note.at().toInstant().isBefore(to))
                .toList();
    }

    /** What an incident says of heat; empty where it is another, is not over, or nobody can tell which way it went. */
    private static Optional<Excursion> excursion(FarmPicture.Note note, double workingCelsius) {
        if (!(note.what() instanceof IncidentNoted it) || it.until() == null) {
            return Optional.empty();
        }
        var from = note.at().toInstant();
        var to = it.until().toInstant();
        return from.isBefore(to)
                ? reached(it)
                        .map(celsius -> new Excursion(
                                celsius < workingCelsius ? Excursion.Kind.COLD : Excursion.Kind.HOT, from, to, celsius))
                : Optional.empty();
    }

    /** As it was read, or else as far as such a thing goes at the most. */
    private static Optional<Double> reached(IncidentNoted it) {
        var read = Optional.ofNullable(it.reached()).map(Temperature::celsius);
        return switch (it.what()) {
            case POWER_CUT, TOO_COLD, DOOR_OPEN -> read.or(() -> Optional.of(ROOM_CELSIUS));
            case TOO_HOT -> read.or(() -> Optional.of(HOT_CELSIUS));
            // Without its fan a machine is hot above and cool below: only a thermometer tells.
            case FAN_STOPPED, OTHER -> read;
            case TURNER_STOPPED, WATER_OUT, DROPPED, SIGNS_OF_DISEASE -> Optional.empty();
        };
    }

    private static Night.How how(FarmPicture.Note note) {
        return note.what() instanceof IncidentNoted it && it.reached() != null
                ? Night.How.READ_BY_HAND
                : Night.How.NOTED;
    }

    private static boolean overlaps(FarmPicture.Note note, Excursion night, double workingCelsius) {
        return excursion(note, workingCelsius)
                .map(told -> told.from().isBefore(night.to()) && night.from().isBefore(told.to()))
                .orElse(!note.at().toInstant().isBefore(night.from())
                        && note.at().toInstant().isBefore(night.to()));
    }

    private static boolean overlaps(Rollup rollup, Excursion night) {
        return rollup.from().isBefore(night.to()) && night.from().isBefore(rollup.to());
    }

    private static String text(FarmPicture.Note note) {
        return note.what() instanceof IncidentNoted it ? it.text() : "";
    }

    private Night night(MachineName machine, Excursion excursion, Night.How how, String noted, List<Warmth> air) {
        var sets = new ArrayList<Night.SetNight>();
        for (var set : picture.sets().values()) {
            var start = set.startedAt().toInstant();
            var species = new TreeSet<Species>();
            for (var load : set.loads().values()) {
                if (start.isBefore(excursion.to()) && stoodIn(load, machine, excursion)) {
                    species.add(Party.species(load));
                }
            }
            for (var one : species) {
                var profile = profiles.apply(one);
                double day = Duration.between(start, excursion.from()).toMillis() / DAY_MILLIS;
                double developed = Math.clamp(day / profile.periodDays().value(), 0, 1);
                if (day <= profile.hatchWindowDays().value().high()) {
                    sets.add(new Night.SetNight(
                            set.name(),
                            one,
                            Math.max(0, (int) Math.floor(day)),
                            NightReckoning.of(
                                    air,
                                    excursion.kind(),
                                    profile.setterTemperature().value().celsius(),
                                    developed),
                            null));
                }
            }
        }
        sets.sort(Comparator.comparingInt(Night.SetNight::day).reversed());
        return new Night(excursion, how, noted, sets);
    }

    private static boolean stoodIn(LoadPicture load, MachineName machine, Excursion night) {
        Optional<Place> then = Optional.empty();
        for (var place : load.places()) {
            if (!place.from().isAfter(night.from())) {
                then = Optional.of(place);
            }
        }
        return then.map(place -> machine.equals(place.machine())).orElse(false);
    }
}
