package eggwright.cli.farm;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/**
 * What {@code today} keeps, as bytes. Readings are much alike, so that all texts are packed as one, and all answers for
 * other programs as another; only as much is unpacked as is asked for.
 *
 * @param from since when it is good
 * @param zone by which the readings were written
 * @param spans when each reading holds, and how long it is
 */
record TodayBytes(
        Instant from, Clock clock, ZoneId zone, List<Span> spans, byte[] texts, byte[] answers, byte[] picture) {
    /** Whose clock the readings go by. */
    enum Clock {
        NOTED,
        OF_THE_MACHINE
    }

    /**
     * One reading.
     *
     * @param textBytes of the text for people, unpacked
     * @param answerBytes of the answer for other programs, unpacked
     */
    private record Span(Instant from, Instant until, int textBytes, int answerBytes) {
        boolean holdsAt(Instant now) {
            return !now.isBefore(from) && now.isBefore(until);
        }
    }

    static byte[] write(Instant from, Clock clock, ZoneId zone, List<TodayReading> readings, byte[] picture) {
        var bytes = new ByteArrayOutputStream();
        try (var out = new DataOutputStream(bytes)) {
            instant(out, from);
            out.writeUTF(clock.name());
            out.writeUTF(zone.getId());
            out.writeInt(readings.size());
            for (var reading : readings) {
                instant(out, reading.from());
                instant(out, reading.until());
                out.writeInt(utf8(reading.text()).length);
                out.writeInt(utf8(reading.afterItsHour()).length);
            }
            block(out, packed(readings, TodayReading::text));
            block(out, packed(readings, TodayReading::afterItsHour));
            block(out, picture);
        } catch (IOException impossible) {
            throw new IllegalStateException("Writing to memory", impossible);
        }
        return bytes.toByteArray();
    }

    private static void instant(DataOutputStream out, Instant at) throws IOException {
        out.writeLong(at.getEpochSecond());
        out.writeInt(at.getNano());
    }

    private static Instant instant(DataInputStream in) throws IOException {
        return Instant.ofEpochSecond(in.readLong(), in.readInt());
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] packed(List<TodayReading> readings, Function<TodayReading, String> part) throws IOException {
        var bytes = new ByteArrayOutputStream();
        try (var out = new DeflaterOutputStream(bytes)) {
            for (var reading : readings) {
                out.write(utf8(part.apply(reading)));
            }
        }
        return bytes.toByteArray();
    }

    private static void block(DataOutputStream out, byte[] bytes) throws IOException {
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    /** Empty where the bytes are not ours. */
    static Optional<TodayBytes> read(byte[] bytes) {
        try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            var from = instant(in);
            var clock = Clock.valueOf(in.readUTF());
            var zone = ZoneId.of(in.readUTF());
            var spans = new ArrayList<Span>();
            for (int left = in.readInt(); left > 0; left--) {
                spans.add(new Span(instant(in), instant(in), in.readInt(), in.readInt()));
            }
            return Optional.of(new TodayBytes(from, clock, zone, spans, block(in), block(in), block(in)));
        } catch (IOException | DateTimeException | IllegalArgumentException notOurs) {
            return Optional.empty();
        }
    }

    private static byte[] block(DataInputStream in) throws IOException {
        return in.readNBytes(in.readInt());
    }

    Optional<String> text(Instant now) {
        return at(now, texts, Span::textBytes);
    }

    Optional<String> afterItsHour(Instant now) {
        return at(now, answers, Span::answerBytes);
    }

    private Optional<String> at(Instant now, byte[] packed, java.util.function.ToIntFunction<Span> length) {
        int before = 0;
        for (var span : spans) {
            int bytes = length.applyAsInt(span);
            if (span.holdsAt(now)) {
                return unpacked(packed, before, bytes);
            }
            before += bytes;
        }
        return Optional.empty();
    }

    private static Optional<String> unpacked(byte[] packed, int before, int length) {
        try (InputStream in = new InflaterInputStream(new ByteArrayInputStream(packed))) {
            in.skipNBytes(before);
            var bytes = in.readNBytes(length);
            return bytes.length == length ? Optional.of(new String(bytes, StandardCharsets.UTF_8)) : Optional.empty();
        } catch (IOException damaged) {
            return Optional.empty();
        }
    }
}
