package eggwright.wire;

import eggwright.book.entry.Payload;
import eggwright.book.entry.PayloadKinds;
import eggwright.book.entry.Replaced;
import eggwright.book.entry.UnknownPayload;
import eggwright.book.entry.Withdrawn;
import eggwright.book.name.EntryId;
import eggwright.book.name.Name;
import eggwright.units.Altitude;
import eggwright.units.Amount;
import eggwright.units.Humidity;
import eggwright.units.Mass;
import eggwright.units.OutOfRange;
import eggwright.units.Temperature;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/** Makes payloads of any kind with any content that their records take. */
final class AnyPayload {
    private static final int MOST_TRIES = 2000;
    private static final List<String> TEXTS = List.of(
            "Wren",
            "7",
            "pen 4, by the hedge",
            "",
            "\"quoted\" \\ and / more",
            "Fasänenküken",
            "雉 🥚",
            "a\u0007b",
            "12.5");
    private static final List<String> ZONES = List.of("America/Chicago", "Europe/London", "UTC", "Asia/Kathmandu");

    private final RandomGenerator random;

    AnyPayload(RandomGenerator random) {
        this.random = random;
    }

    Payload of(String kind) {
        return (Payload) record(PayloadKinds.byWord(kind).orElseThrow());
    }

    /** An instant with whole minutes, seconds or nanoseconds and any offset. */
    OffsetDateTime instant() {
        var day = day().atTime(hour());
        return day.atOffset(ZoneOffset.ofTotalSeconds(60 * 15 * random.nextInt(-48, 57)));
    }

    private Object record(Class<?> type) {
        OutOfRange last = new OutOfRange("Not tried");
        for (int i = 0; i < MOST_TRIES; i++) {
            try {
                return attempt(type);
            } catch (OutOfRange refused) {
                last = refused;
            }
        }
        throw new AssertionError("No " + type + " was taken in " + MOST_TRIES + " tries", last);
    }

    private Object attempt(Class<?> type) {
        var components = type.getRecordComponents();
        var types = new Class<?>[components.length];
        var values = new @Nullable Object[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            values[i] = isNullable(components[i].getAnnotatedType()) && random.nextInt(3) == 0
                    ? null
                    : component(components[i]);
        }
        try {
            var constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof OutOfRange outOfRange) {
                throw outOfRange;
            }
            throw new AssertionError(refused);
        } catch (ReflectiveOperationException broken) {
            throw new LinkageError("A record cannot be made: " + type, broken);
        }
    }

    private static boolean isNullable(AnnotatedElement type) {
        return type.isAnnotationPresent(Nullable.class);
    }

    private Object component(RecordComponent component) {
        if (component.getName().equals("timeZone")) {
            return pick(ZONES);
        }
        if (component.getType() == List.class) {
            var element = (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
            var list = new ArrayList<Object>();
            for (int i = random.nextInt(4); i > 0; i--) {
                list.add(value(element));
            }
            return list;
        }
        return value(component.getType());
    }

    private Object value(Class<?> type) {
        if (type == int.class || type == Integer.class) {
            return random.nextInt(random.nextBoolean() ? 40 : 1_000_001);
        } else if (type == String.class) {
            return pick(TEXTS);
        } else if (type.isEnum()) {
            return pick(List.of(type.getEnumConstants()));
        } else if (type == LocalDate.class) {
            return day();
        } else if (type == LocalTime.class) {
            return hour();
        } else if (type == OffsetDateTime.class) {
            return instant();
        } else if (type == Temperature.class) {
            return new Temperature(random.nextInt(700, 1100) / 10.0, pick(List.of(Temperature.Scale.values())));
        } else if (type == Amount.class) {
            return new Amount(random.nextInt(-500, 1100) / 10.0, pick(List.of(Amount.Unit.values())));
        } else if (type == Altitude.class) {
            return Altitude.ofMetres(random.nextInt(-400, 5000));
        } else if (type == Mass.class) {
            return new Mass(random.nextInt(0, 20_000) / 100.0, pick(List.of(Mass.Unit.values())));
        } else if (type == Humidity.class) {
            return new Humidity(random.nextInt(0, 1001) / 10.0);
        } else if (type == EntryId.class) {
            return EntryId.of(random.nextLong(1L << 47), random.nextLong(), random.nextLong());
        } else if (type == Payload.class) {
            return inAMend();
        } else if (Name.class.isAssignableFrom(type)) {
            return record(type);
        }
        return record(type);
    }

    private Payload inAMend() {
        if (random.nextInt(5) == 0) {
            return new UnknownPayload(pick(List.of("moon-seen", "looked")), "{\"phase\":1.50,\"n\":[1,null,true]}");
        }
        var payload = of(pick(PayloadKinds.words().stream().sorted().toList()));
        return payload instanceof Replaced || payload instanceof Withdrawn ? inAMend() : payload;
    }

    private LocalDate day() {
        return LocalDate.ofEpochDay(random.nextLong(
                LocalDate.of(1900, 1, 2).toEpochDay(),
                LocalDate.of(2099, 12, 30).toEpochDay()));
    }

    private LocalTime hour() {
        return switch (random.nextInt(3)) {
            case 0 -> LocalTime.ofSecondOfDay(60L * random.nextInt(1440));
            case 1 -> LocalTime.ofSecondOfDay(random.nextInt(86_400));
            default -> LocalTime.ofNanoOfDay(random.nextLong(86_400_000_000_000L));
        };
    }

    private <T> T pick(List<T> among) {
        return among.get(random.nextInt(among.size()));
    }
}
