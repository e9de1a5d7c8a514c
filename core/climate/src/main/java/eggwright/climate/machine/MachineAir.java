package eggwright.climate.machine;

import eggwright.book.name.MachineName;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.MachinePicture;
import eggwright.book.picture.Picture;
import eggwright.book.picture.SetPicture;
import eggwright.climate.air.AirHistory;
import eggwright.climate.air.AirHour;
import eggwright.climate.air.AirTelling;
import eggwright.climate.air.AirTold;
import eggwright.climate.air.SetPoint;
import eggwright.climate.air.Surroundings;
import eggwright.climate.reading.ReadingPlace;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import eggwright.units.Humidity;
import eggwright.units.Temperature;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The air of the farm's machines; what each tells is gathered once. */
final class MachineAir {
    /** Older sets say nothing of these hens and this machine: a season. */
    private static final Duration REACH = Duration.ofDays(400);

    /** Eggs that waited for longer are hardly set: ours. */
    private static final Duration STORED_AT_MOST = Duration.ofDays(35);

    /** Pheasant eggs kept best at 14 °C and 70 % (HUNGSTORE of the trade's sources). Taken where nobody read the egg room. */
    private static final SetPoint EGG_ROOM = new SetPoint(Temperature.ofCelsius(14), new Humidity(70));

    private static final double MILLIS_PER_DAY = 86_400_000.0;

    private final Picture picture;
    private final AirTelling telling;
    private final Surroundings surroundings;
    private final Function<Species, SpeciesProfile> profiles;
    private final Instant now;
    private final Map<ReadingPlace, AirTold> told = new HashMap<>();

    MachineAir(
            Picture picture,
            AirTelling telling,
            Surroundings surroundings,
            Function<Species, SpeciesProfile> profiles,
            Instant now) {
        this.picture = picture;
        this.telling = telling;
        this.surroundings = surroundings;
        this.profiles = profiles;
        this.now = now;
    }

    /** The custom of a species, where nobody read the machine. */
    SetPoint setPoint(Species species, Stage stage) {
        var profile = profiles.apply(species);
        var humidity = switch (stage) {
            case SETTER -> profile.setterHumidity().value();
            case HATCHER -> profile.hatcherHumidity().value();
        };
        return new SetPoint(
                switch (stage) {
                    case SETTER -> profile.setterTemperature().value();
                    case HATCHER -> profile.hatcherTemperature().value();
                },
                new Humidity((humidity.low().pct() + humidity.high().pct()) / 2));
    }

    /** Which of the two a machine is to the eggs in it. */
    enum Stage {
        SETTER,
        HATCHER
    }

    /** The last hour of a machine. */
    AirHour last(MachineName machine, SetPoint setPoint) {
        return AirHistory.of(told(machine), setPoint, surroundings, now.minus(Duration.ofHours(1)), now)
                .getLast();
    }

    /** The air that a load had between two instants, through every machine in which it stood. */
    List<AirHour> history(LoadPicture load, Species species, Instant start, Instant end) {
        var places = load.places();
        var history = new ArrayList<AirHour>();
        if (places.isEmpty()) {
            return AirHistory.of(AirTold.NOTHING, setPoint(species, Stage.SETTER), surroundings, start, end);
        }
        var transferred = Optional.ofNullable(load.transferredAt());
        for (int i = 0; i < places.size(); i++) {
            var from = i == 0 || places.get(i).from().isBefore(start)
                    ? start
                    : places.get(i).from();
            var to = i + 1 < places.size() ? places.get(i + 1).from() : end;
            to = to.isAfter(end) ? end : to;
            if (from.isBefore(to)) {
                var stage = transferred.isPresent() && !from.isBefore(transferred.get()) ? Stage.HATCHER : Stage.SETTER;
                history.addAll(AirHistory.of(
                        Optional.ofNullable(places.get(i).machine())
                                .map(this::told)
                                .orElse(AirTold.NOTHING),
                        setPoint(species, stage),
                        surroundings,
                        from,
                        to));
            }
        }
        return history;
    }

    /** The air of the egg room until a set; empty where nobody knows how long the eggs waited. */
    List<AirHour> beforeSet(Instant start, double days) {
        var laid = start.minusMillis(Math.round(days * MILLIS_PER_DAY));
        return days > 0
                ? AirHistory.of(told(new ReadingPlace.EggRoom(), Optional.empty()), EGG_ROOM, surroundings, laid, start)
                : List.of();
    }

    private AirTold told(MachineName machine) {
        return told(new ReadingPlace.InMachine(machine), picture.machine(machine));
    }

    private AirTold told(ReadingPlace place, Optional<MachinePicture> machine) {
        var known = told.get(place);
        if (known != null) {
            return known;
        }
        var earliest = now.minus(REACH);
        var from = picture.sets().values().stream()
                .map(SetPicture::startedAt)
                .map(java.time.OffsetDateTime::toInstant)
                .filter(start -> start.isAfter(earliest))
                .min(Comparator.naturalOrder())
                .orElse(now)
                .minus(place instanceof ReadingPlace.EggRoom ? STORED_AT_MOST : Duration.ofDays(1));
        var fresh = telling.of(place, machine, from, now);
        told.put(place, fresh);
        return fresh;
    }
}
