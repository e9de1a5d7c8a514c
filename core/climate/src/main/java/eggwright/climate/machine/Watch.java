package eggwright.climate.machine;

import eggwright.book.name.MachineName;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.Picture;
import eggwright.book.picture.Place;
import eggwright.climate.air.AirTelling;
import eggwright.climate.excursion.Excursion;
import eggwright.climate.excursion.Excursions;
import eggwright.climate.excursion.WorkingBand;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.rollup.Band;
import eggwright.climate.rollup.Cut;
import eggwright.climate.rollup.Rollup;
import eggwright.trade.RoomHeat;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import eggwright.trade.source.Sourced;
import eggwright.units.Temperature;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * Looks over every place that has a sensor. It speaks of places that hold something alive: a machine with eggs in it, the egg
 * room while eggs wait there, the brooder while chicks need heat. It sees only what sensors send while they send it, and is no
 * alarm of its own.
 */
public final class Watch {
    /** A sensor that was silent for longer says nothing of now: ours. */
    static final Duration FRESH = Duration.ofMinutes(30);

    /** A place that was outside when its sensor fell silent is not forgotten for so long: ours. */
    static final Duration REMEMBERED = Duration.ofHours(6);

    /** A door that is open for a look is no alarm: ours. */
    static final Duration PATIENCE = Duration.ofMinutes(10);

    private static final Duration HABIT_OF_MACHINES = Duration.ofDays(3);
    private static final Duration HABIT_OF_ROOMS = Duration.ofDays(7);
    private static final Duration LOOKED_BACK = Duration.ofDays(3);

    private final Picture picture;
    private final AirTelling telling;
    private final Function<Species, SpeciesProfile> profiles;

    /** @param profiles the trade's, with the farm's own figures laid over them */
    public Watch(Picture picture, AirTelling telling, Function<Species, SpeciesProfile> profiles) {
        this.picture = picture;
        this.telling = telling;
        this.profiles = profiles;
    }

    /** How a place stands, as far as it can be told. */
    public sealed interface Standing {
        /** A sensor that is heard says that it is in its band. */
        record Inside() implements Standing {}

        /** It has been outside for a while. */
        record Outside(Alert alert) implements Standing {}

        /** No sensor is heard, or nothing in it would suffer, or it is outside for a moment only. */
        record NotTold() implements Standing {}
    }

    /** Those that are outside, longest first. */
    public List<Alert> at(Instant now) {
        var alerts = new ArrayList<Alert>();
        for (var place : telling.readSince(now.minus(REMEMBERED))) {
            if (of(place, now) instanceof Standing.Outside(var alert)) {
                alerts.add(alert);
            }
        }
        alerts.sort(Comparator.comparing(Alert::since));
        return alerts;
    }

    /** One place. Where several sensors are heard, one that is outside is enough. */
    public Standing of(ReadingPlace place, Instant now) {
        var known = band(place, now);
        if (known.isEmpty()) {
            return new Standing.NotTold();
        }
        var band = known.get();
        Standing standing = new Standing.NotTold();
        var alerts = new ArrayList<Alert>();
        for (var sensor : telling.temperaturesOfEach(place, now.minus(LOOKED_BACK), now, Cut.MINUTE)) {
            var alert = alert(place, sensor, band, now);
            if (alert.isPresent()) {
                alerts.add(alert.get());
            } else if (isHeard(sensor, now)
                    && Excursions.kind(sensor.getLast(), band).isEmpty()) {
                standing = new Standing.Inside();
            }
        }
        // One that is heard goes before one that has fallen silent.
        var heard = alerts.stream()
                .filter(alert -> alert.hearing() == Alert.Hearing.NOW)
                .min(Comparator.comparing(Alert::since));
        if (heard.isPresent()) {
            return new Standing.Outside(heard.get());
        }
        return standing instanceof Standing.Inside || alerts.isEmpty()
                ? standing
                : new Standing.Outside(alerts.getFirst());
    }

    private static boolean isHeard(List<Rollup> sensor, Instant now) {
        return !sensor.getLast().to().isBefore(now.minus(FRESH));
    }

    private Optional<Alert> alert(ReadingPlace place, List<Rollup> sensor, Band band, Instant now) {
        var last = sensor.getLast();
        if (last.to().isBefore(now.minus(REMEMBERED))) {
            return Optional.empty();
        }
        var until = last.to().isAfter(now) ? now : last.to();
        return Excursions.kind(last, band).flatMap(kind -> {
            var since = since(sensor, band, kind);
            return Duration.between(since, until).compareTo(PATIENCE) < 0
                    ? Optional.empty()
                    : Optional.of(new Alert(
                            place,
                            kind,
                            isHeard(sensor, now) ? Alert.Hearing.NOW : Alert.Hearing.SILENT_SINCE,
                            since,
                            last.mean(),
                            until,
                            band));
        });
    }

    /** Back to where it left the band; a short return is none. */
    private static Instant since(List<Rollup> sensor, Band band, Excursion.Kind kind) {
        var since = sensor.getLast().from();
        for (var rollup : sensor.reversed()) {
            if (Excursions.kind(rollup, band).filter(k -> k == kind).isPresent()) {
                since = rollup.from();
            } else if (Duration.between(rollup.to(), since).compareTo(Excursions.SHORTEST_PAUSE) > 0) {
                break;
            }
        }
        return since;
    }

    /** Empty where nothing in it would suffer. */
    private Optional<Band> band(ReadingPlace place, Instant now) {
        return switch (place) {
            case ReadingPlace.InMachine(var machine) ->
                setPoint(machine).map(celsius -> WorkingBand.of(hours(place, now, HABIT_OF_MACHINES), celsius));
            case ReadingPlace.EggRoom room ->
                picture.eggRoom().values().stream().anyMatch(shelf -> shelf.eggs() > 0)
                        ? Optional.of(RoomBand.of(RoomHeat.ofEggRoom().value(), hours(place, now, HABIT_OF_ROOMS)))
                        : Optional.empty();
            case ReadingPlace.Brooder brooder ->
                youngest(now)
                        .flatMap(RoomHeat::ofBrooder)
                        .map(Sourced::value)
                        .map(heat -> RoomBand.of(heat, hours(place, now, HABIT_OF_ROOMS)));
        };
    }

    private List<Rollup> hours(ReadingPlace place, Instant now, Duration habit) {
        return telling.temperatures(place, now.minus(habit), now.minus(FRESH), Cut.HOUR);
    }

    /** Of the species with most eggs in a machine; empty where it holds none. */
    private Optional<Temperature> setPoint(MachineName machine) {
        return picture.sets().values().stream()
                .flatMap(set -> set.loads().values().stream())
                .filter(load -> load.phase() != LoadPhase.OUT)
                .filter(load ->
                        load.place().map(Place::machine).filter(machine::equals).isPresent())
                .max(Comparator.comparingInt(Watch::eggs))
                .map(load -> {
                    var profile = profiles.apply(Party.species(load));
                    return load.phase() == LoadPhase.IN_HATCHER
                            ? profile.hatcherTemperature().value()
                            : profile.setterTemperature().value();
                });
    }

    private static int eggs(LoadPicture load) {
        return Objects.requireNonNullElse(load.eggsNow(), load.eggsSet());
    }

    /** Days since the last chicks came off, in any pull; empty where none ever did. */
    private Optional<Double> youngest(Instant now) {
        return picture.sets().values().stream()
                .flatMap(set -> set.pulls().stream())
                .map(pull -> pull.at().toInstant())
                .filter(off -> !off.isAfter(now))
                .max(Comparator.naturalOrder())
                .map(off -> Duration.between(off, now).toMinutes() / 1440.0);
    }
}
