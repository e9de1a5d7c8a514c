package eggwright.intake.sensor;

import eggwright.climate.reading.Channel;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Which sensors may send. Whatever changes is in the book before it holds, and holds from the next message on.
 *
 * <p>Safe for many threads. It is the only one that writes to its book.
 */
public final class Sensors {
    /** More than one hatchery hangs up; each costs a row. */
    public static final int MOST = 200;

    private static final int ID_BYTES = 8;

    private final SensorBook book;
    private final InstantSource clock;
    private final RandomGenerator random;
    /** Read when it is first needed; absent until then. */
    private @Nullable Map<String, Sensor> byToken;

    /** @param random hard to guess */
    public Sensors(SensorBook book, InstantSource clock, RandomGenerator random) {
        this.book = book;
        this.clock = clock;
        this.random = random;
    }

    /** What became of a sensor that was to be added. */
    public sealed interface Added {
        /** It may send, with this token, which is nowhere kept and cannot be shown again. */
        record In(Sensor sensor, String token) implements Added {}

        /** One of that name measures the same there already. */
        record Taken(Sensor by) implements Added {}

        /** There are {@value Sensors#MOST}. */
        record TooMany() implements Added {}
    }

    /** Who holds a token. */
    public sealed interface Known {
        record By(Sensor sensor) implements Known {}

        /** It held once. */
        record Revoked(Sensor sensor) implements Known {}

        /** It never was one. */
        record Nobody() implements Known {}
    }

    private Map<String, Sensor> byToken() {
        var known = byToken;
        if (known == null) {
            known = book.all().stream()
                    .collect(Collectors.toMap(Sensor::tokenSha256, s -> s, (a, b) -> b, HashMap::new));
            byToken = known;
        }
        return known;
    }

    private void keep(Sensor sensor) {
        book.keep(sensor);
        byToken().put(sensor.tokenSha256(), sensor);
    }

    /** All that were ever added, by when they were. */
    public synchronized List<Sensor> all() {
        return book.all();
    }

    public synchronized Added add(Channel channel) {
        var sending = byToken().values().stream().filter(Sensor::mayTell).toList();
        var same = sending.stream().filter(s -> s.channel().equals(channel)).findFirst();
        if (same.isPresent()) {
            return new Added.Taken(same.get());
        }
        if (sending.size() >= MOST) {
            return new Added.TooMany();
        }
        var token = Token.fresh(random);
        var id = new byte[ID_BYTES];
        random.nextBytes(id);
        var sensor = new Sensor(HexFormat.of().formatHex(id), channel, Token.sha256(token), clock.instant(), null);
        keep(sensor);
        return new Added.In(sensor, token);
    }

    /** Its token is worth nothing from the next message on; what it told stays. Empty where none of that id may send. */
    public synchronized Optional<Sensor> revoke(String id) {
        var found = byToken().values().stream()
                .filter(s -> s.id().equals(id) && s.mayTell())
                .findFirst();
        found.map(s -> s.revokedAt(clock.instant())).ifPresent(this::keep);
        return found;
    }

    public synchronized Known known(String token) {
        var sensor = byToken().get(Token.sha256(token));
        if (sensor == null) {
            return new Known.Nobody();
        }
        return sensor.mayTell() ? new Known.By(sensor) : new Known.Revoked(sensor);
    }
}
