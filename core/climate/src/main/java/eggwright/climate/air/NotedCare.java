package eggwright.climate.air;

import eggwright.book.entry.SensorAt;
import eggwright.book.entry.SensorPlace;
import eggwright.book.entry.SensorQuantity;
import eggwright.book.entry.SensorTrust;
import eggwright.book.picture.Picture;
import eggwright.book.picture.SensorPicture;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.sensor.Aside;
import eggwright.climate.sensor.Calibration;
import eggwright.climate.sensor.Corrections;
import eggwright.climate.sensor.Released;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the book says of the sensors. */
public final class NotedCare implements SensorCare {
    private record Said(Corrections corrections, List<Released> released, List<Aside> aside) {
        static final Said NOTHING = new Said(Corrections.NONE, List.of(), List.of());
    }

    private final Map<SensorAt, Said> said = new HashMap<>();

    public NotedCare(Picture picture) {
        picture.sensors().forEach((sensor, noted) -> said.put(sensor, said(noted)));
    }

    /** The words of the book for a channel. */
    public static SensorAt of(Channel channel) {
        var quantity = switch (channel.quantity()) {
            case AIR_TEMPERATURE -> SensorQuantity.AIR_TEMPERATURE;
            case WET_BULB -> SensorQuantity.WET_BULB;
            case EGG_TEMPERATURE -> SensorQuantity.EGG_TEMPERATURE;
            case HUMIDITY -> SensorQuantity.HUMIDITY;
            case PRESSURE -> SensorQuantity.PRESSURE;
        };
        var name = channel.sensor().text();
        return switch (channel.place()) {
            case ReadingPlace.InMachine(var machine) -> new SensorAt(SensorPlace.IN_MACHINE, machine, name, quantity);
            case ReadingPlace.EggRoom() -> new SensorAt(SensorPlace.EGG_ROOM, null, name, quantity);
            case ReadingPlace.Brooder() -> new SensorAt(SensorPlace.BROODER, null, name, quantity);
        };
    }

    /** Where a sensor hangs, in the words of readings. */
    public static ReadingPlace place(SensorAt sensor) {
        var machine = sensor.machine();
        return switch (sensor.place()) {
            case IN_MACHINE ->
                new ReadingPlace.InMachine(Optional.ofNullable(machine).orElseThrow());
            case EGG_ROOM -> new ReadingPlace.EggRoom();
            case BROODER -> new ReadingPlace.Brooder();
        };
    }

    /** What it measures, in the words of readings. */
    public static Quantity quantity(SensorAt sensor) {
        return switch (sensor.quantity()) {
            case AIR_TEMPERATURE -> Quantity.AIR_TEMPERATURE;
            case WET_BULB -> Quantity.WET_BULB;
            case EGG_TEMPERATURE -> Quantity.EGG_TEMPERATURE;
            case HUMIDITY -> Quantity.HUMIDITY;
            case PRESSURE -> Quantity.PRESSURE;
        };
    }

    private static Said said(SensorPicture noted) {
        return new Said(
                new Corrections(noted.compared().stream()
                        .map(c -> new Calibration(c.from().toInstant(), c.what().correction()))
                        .toList()),
                noted.released().stream()
                        .map(r -> new Released(
                                r.what().from().toInstant(), r.what().to().toInstant()))
                        .toList(),
                aside(noted.trusted()));
    }

    /** The last word from a moment on holds until the next. */
    private static List<Aside> aside(List<SensorPicture.Trusted> words) {
        var aside = new ArrayList<Aside>();
        @Nullable Instant since = null;
        for (var word : words) {
            var from = word.from().toInstant();
            boolean isAside = word.what().trust() == SensorTrust.SET_ASIDE;
            if (isAside && since == null) {
                since = from;
            } else if (!isAside && since != null) {
                aside.add(new Aside(since, from));
                since = null;
            }
        }
        if (since != null) {
            aside.add(new Aside(since, null));
        }
        return aside;
    }

    private Said said(Channel channel) {
        return said.getOrDefault(of(channel), Said.NOTHING);
    }

    @Override
    public Corrections corrections(Channel channel) {
        return said(channel).corrections();
    }

    @Override
    public List<Released> released(Channel channel) {
        return said(channel).released();
    }

    @Override
    public List<Aside> aside(Channel channel) {
        return said(channel).aside();
    }
}
