package eggwright.intake.message;

import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.ReadingStore.Taken;
import eggwright.climate.reading.Readings;
import eggwright.intake.message.Complaint.Kind;
import eggwright.intake.sensor.Sensor;
import eggwright.intake.sensor.Sensors;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The one way by which a sensor's message becomes readings, however it came. A message is taken whole or not at all; what
 * is not taken is counted, and the last reason kept until the desk is closed. Safe for many threads.
 */
public final class Intake {
    /** Bytes of the longest message: some days of minutes. */
    public static final int LONGEST = 128 * 1024;

    private static final Logger LOG = LoggerFactory.getLogger(Intake.class);

    private final Sensors sensors;
    private final ReadingStore readings;
    private final InstantSource clock;
    /** Made when something first comes: a desk without sensors never needs its library. */
    private @Nullable Often often;

    private final Map<String, Tally> tallies = new HashMap<>();
    private Tally nobodys = Tally.NOTHING;

    public Intake(Sensors sensors, ReadingStore readings, InstantSource clock) {
        this.sensors = sensors;
        this.readings = readings;
        this.clock = clock;
    }

    /** What became of a message. */
    public sealed interface Outcome {
        /**
         * All its readings are kept; they survive a power cut.
         *
         * @param heldBack of them: kept, but not believed; empty where that could not be counted
         */
        record Kept(Sensor by, Taken taken, OptionalLong heldBack) implements Outcome {}

        /** Nothing of it is kept. */
        record Refused(Complaint why) implements Outcome {}
    }

    private synchronized Often often() {
        var made = often;
        if (made == null) {
            made = new Often(clock);
            often = made;
        }
        return made;
    }

    /** @param token as it was sent */
    public Outcome take(String token, byte[] body, Delivery delivery) {
        return switch (sensors.known(token)) {
            case Sensors.Known.Nobody() ->
                refuseNobody(
                        often().isTooOften()
                                ? Complaint.of(Kind.TOO_OFTEN, Often.MOST)
                                : Complaint.of(Kind.UNKNOWN_TOKEN));
            case Sensors.Known.Revoked(var sensor) -> refuse(sensor, Complaint.of(Kind.REVOKED_TOKEN, sensor.name()));
            case Sensors.Known.By(var sensor) -> take(sensor, body, delivery);
        };
    }

    /** A message that is longer than {@value #LONGEST} bytes, of which nothing was read. */
    public Outcome tooLong(String token) {
        var why = Complaint.of(Kind.TOO_LONG, LONGEST / 1024);
        return switch (sensors.known(token)) {
            case Sensors.Known.Nobody() -> refuseNobody(why);
            case Sensors.Known.Revoked(var sensor) -> refuse(sensor, why);
            case Sensors.Known.By(var sensor) -> refuse(sensor, why);
        };
    }

    private Outcome take(Sensor sensor, byte[] body, Delivery delivery) {
        if (often().isTooOften(sensor)) {
            return refuse(sensor, Complaint.of(Kind.TOO_OFTEN, Often.MOST));
        }
        if (body.length > LONGEST) {
            return refuse(sensor, Complaint.of(Kind.TOO_LONG, LONGEST / 1024));
        }
        var now = clock.instant();
        return switch (Tellings.read(body, sensor.channel().unit(), new Moments(now))) {
            case Tellings.Parsed.Wrong(var why) -> refuse(sensor, why);
            case Tellings.Parsed.Whole(var tellings) ->
                switch (delivery) {
                    case LIVE -> keep(sensor, tellings, now);
                    case RETAINED ->
                        isTimed(tellings) ? keep(sensor, tellings, now) : refuse(sensor, Complaint.of(Kind.RETAINED));
                    case REPEATED ->
                        isTimed(tellings) ? keep(sensor, tellings, now) : refuse(sensor, Complaint.of(Kind.REPEATED));
                };
        };
    }

    private static boolean isTimed(List<Telling> tellings) {
        return tellings.stream().allMatch(t -> t.at().isPresent());
    }

    private Outcome keep(Sensor sensor, List<Telling> tellings, Instant now) {
        var told = Readings.of(
                tellings.stream()
                        .mapToLong(t -> t.at().orElse(now).toEpochMilli())
                        .toArray(),
                tellings.stream().mapToDouble(Telling::value).toArray());
        Taken taken;
        try {
            taken = readings.take(sensor.channel(), told);
        } catch (RuntimeException notSaved) {
            LOG.error("What {} told is not kept", sensor.name(), notSaved);
            return refuse(sensor, Complaint.of(Kind.NOT_SAVED));
        }
        // What stands twice in one message was known when it was read the second time.
        long known = tellings.size() - taken.fresh();
        count(sensor, taken.fresh(), known);
        return new Outcome.Kept(sensor, new Taken(taken.fresh(), known), heldBack(sensor, told));
    }

    /** What fails here fails after all was kept: to refuse the message now would be untrue. */
    private OptionalLong heldBack(Sensor sensor, Readings told) {
        try {
            return OptionalLong.of(HeldBack.count(readings, sensor.channel(), told));
        } catch (RuntimeException notCounted) {
            LOG.warn("What {} told is kept; what of it is held back could not be counted", sensor.name(), notCounted);
            return OptionalLong.empty();
        }
    }

    private synchronized void count(Sensor sensor, long fresh, long known) {
        tallies.merge(sensor.id(), Tally.NOTHING.with(fresh, known), (a, b) -> a.with(fresh, known));
    }

    private synchronized Outcome refuse(Sensor sensor, Complaint why) {
        var last = new Complaint.Last(clock.instant(), why);
        tallies.put(sensor.id(), tally(sensor).with(last));
        return new Outcome.Refused(why);
    }

    private synchronized Outcome refuseNobody(Complaint why) {
        nobodys = nobodys.with(new Complaint.Last(clock.instant(), why));
        return new Outcome.Refused(why);
    }

    /** What came of this sensor's messages since the desk was opened. */
    public synchronized Tally tally(Sensor sensor) {
        return tallies.getOrDefault(sensor.id(), Tally.NOTHING);
    }

    /** What came of messages under tokens that nobody has. */
    public synchronized Tally nobodys() {
        return nobodys;
    }
}
