package eggwright.climate.machine;

import eggwright.book.name.MachineName;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.Picture;
import eggwright.book.picture.Place;
import eggwright.book.picture.SetPicture;
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
import java.time.OffsetDateTime;
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

    /** A door that is open for a look is no alarm: ours. */
    static final Duration PATIENCE = Duration.ofMinutes(10);

    private static final Duration HABIT = Duration.ofDays(3);
    private static final Duration DAY = Duration.ofDays(1);
    private static final Cut CUT = new Cut.Every(Duration.ofMinutes(5));

    private final Picture picture;
    private final AirTelling telling;
    private final Function<Species, SpeciesProfile> profiles;

    /** @param profiles the trade's, with the farm's own figures laid over them */
    public Watch(Picture picture, AirTelling telling, Function<Species, SpeciesProfile> profiles) {
        this.picture = picture;
        this.telling = telling;
        this.profiles = profiles;
    }

    /** Those that are outside, longest first. */
    public List<Alert> at(Instant now) {
        var alerts = new ArrayList<Alert>();
        for (var place : telling.readSince(now.minus(FRESH))) {
            band(place, now).flatMap(band -> alert(place, band, now)).ifPresent(alerts::add);
        }
        alerts.sort(Comparator.comparing(Alert::since));
        return alerts;
    }

    private Optional<Alert> alert(ReadingPlace place, Band band, Instant now) {
        var rollups = telling.temperatures(place, now.minus(DAY), now, CUT);
        if (rollups.isEmpty() || rollups.getLast().to().isBefore(now.minus(FRESH))) {
            return Optional.empty();
        }
        var last = rollups.getLast();
        var kind = Excursions.kind(last, band);
        return kind.flatMap(which -> {
            var since = since(rollups, band, which);
            return Duration.between(since, last.to()).compareTo(PATIENCE) < 0
                    ? Optional.empty()
                    : Optional.of(new Alert(place, which, since, last.mean(), last.to(), band));
        });
    }

    /** Back to where it left the band; a short return is none. */
    private static Instant since(List<Rollup> rollups, Band band, Excursion.Kind kind) {
        var since = rollups.getLast().from();
        for (var rollup : rollups.reversed()) {
            if (Excursions.kind(rollup, band).filter(k -> k == kind).isPresent()) {
                if (Duration.between(rollup.to(), since).compareTo(Excursions.SHORTEST_PAUSE) > 0) {
                    break;
                }
                since = rollup.from();
            }
        }
        return since;
    }

    /** Empty where nothing in it would suffer. */
    private Optional<Band> band(ReadingPlace place, Instant now) {
        return switch (place) {
            case ReadingPlace.InMachine(var machine) ->
                setPoint(machine).map(celsius -> WorkingBand.of(hours(place, now), celsius));
            case ReadingPlace.EggRoom room ->
                picture.eggRoom().values().stream().anyMatch(shelf -> shelf.eggs() > 0)
                        ? Optional.of(RoomBand.of(RoomHeat.ofEggRoom().value(), hours(place, now)))
                        : Optional.empty();
            case ReadingPlace.Brooder brooder ->
                youngest(now)
                        .flatMap(RoomHeat::ofBrooder)
                        .map(Sourced::value)
                        .map(heat -> RoomBand.of(heat, hours(place, now)));
        };
    }

    private List<Rollup> hours(ReadingPlace place, Instant now) {
        return telling.temperatures(place, now.minus(HABIT), now.minus(FRESH), Cut.HOUR);
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

    /** Days since the last chicks came off; empty where none ever did. */
    private Optional<Double> youngest(Instant now) {
        return picture.sets().values().stream()
                .map(SetPicture::takenOffAt)
                .filter(Objects::nonNull)
                .map(OffsetDateTime::toInstant)
                .filter(off -> !off.isAfter(now))
                .max(Comparator.naturalOrder())
                .map(off -> Duration.between(off, now).toMinutes() / 1440.0);
    }
}
