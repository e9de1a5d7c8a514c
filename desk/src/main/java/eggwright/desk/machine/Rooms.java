package eggwright.desk.machine;

import eggwright.book.name.MachineName;
import eggwright.book.picture.Habits;
import eggwright.book.picture.Picture;
import eggwright.climate.air.AirTelling;
import eggwright.climate.air.NotedCare;
import eggwright.climate.air.Surroundings;
import eggwright.climate.care.PlaceSensors;
import eggwright.climate.care.SensorNow;
import eggwright.climate.machine.Alert;
import eggwright.climate.machine.MachineNights;
import eggwright.climate.machine.MachineNow;
import eggwright.climate.machine.MachineRoom;
import eggwright.climate.machine.Watch;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingStore;
import eggwright.egg.air.StandardAtmosphere;
import eggwright.egg.air.Ventilation;
import eggwright.today.schedule.FarmProfiles;
import eggwright.units.Pressure;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What book and sensors say of the machines. */
final class Rooms {
    /** As long as eggs that lived through one may still be in. */
    private static final Duration NIGHTS = Duration.ofDays(30);

    private final ReadingStore readings;
    private final LooksDue looksDue = new LooksDue();

    Rooms(ReadingStore readings) {
        this.readings = readings;
    }

    ReadingStore readings() {
        return readings;
    }

    /** The sensors of one machine. */
    List<Channel> channels(MachineName machine) {
        return channels(new ReadingPlace.InMachine(machine));
    }

    /** The sensors of a place. */
    List<Channel> channels(ReadingPlace place) {
        return readings.channels().stream().filter(c -> c.place().equals(place)).toList();
    }

    /** Whether anybody or anything ever spoke of it. */
    boolean knows(Picture picture, MachineName machine) {
        return picture.machine(machine).isPresent() || !channels(machine).isEmpty();
    }

    MachineNow now(Picture picture, MachineName machine, Instant at) {
        var profiles = FarmProfiles.of(picture.farm());
        return new MachineRoom(
                        picture, telling(picture), surroundings(picture.farm().habits()), profiles::of, at)
                .of(machine);
    }

    /** The bad nights of the last weeks. */
    MachineNights.Known nights(Picture picture, MachineName machine, Instant at) {
        var profiles = FarmProfiles.of(picture.farm());
        return new MachineNights(picture, telling(picture), profiles::of).known(machine, at.minus(NIGHTS), at);
    }

    /** What the sensors tell, with what people said of them. */
    AirTelling telling(Picture picture) {
        return new AirTelling(readings, new NotedCare(picture));
    }

    /** The sensors of a place, and which to look at. */
    List<SensorNow> sensors(Picture picture, ReadingPlace place, Instant from, Instant at) {
        return new PlaceSensors(readings, picture, surroundings(picture.farm().habits())).of(place, from, at);
    }

    /** How many sensors of a place to go and look at, as of the last minutes. */
    long looksDue(Picture picture, ReadingPlace place, Instant at) {
        return looksDue.of(
                place,
                picture,
                at,
                here -> sensors(picture, here, at.minus(PlaceSensors.LOOKED_BACK), at).stream()
                        .filter(sensor -> !sensor.findings().isEmpty())
                        .count());
    }

    /** What is outside its band now. */
    List<Alert> outside(Picture picture, Instant at) {
        var profiles = FarmProfiles.of(picture.farm());
        return new Watch(picture, telling(picture), profiles::of).at(at);
    }

    /** How one place stands now. */
    Watch.Standing standing(Picture picture, ReadingPlace place, Instant at) {
        var profiles = FarmProfiles.of(picture.farm());
        return new Watch(picture, telling(picture), profiles::of).of(place, at);
    }

    /** Of the altitude that the farm noted, or of sea level. */
    static Surroundings surroundings(Habits habits) {
        return new Surroundings(
                Optional.ofNullable(habits.altitude())
                        .map(height -> StandardAtmosphere.at(height).pressure())
                        .orElse(Pressure.SEA_LEVEL),
                switch (habits.wetBulbAir()) {
                    case MOVING -> Ventilation.ASPIRATED;
                    case STILL -> Ventilation.STILL;
                });
    }
}
