package eggwright.wire;

import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** How values of one type lie in bytes: by what the type is, with no names and no types beside them. */
final class ValueForm {
    private enum Sort {
        NUMBER,
        LONG,
        DOUBLE,
        TEXT,
        WORD,
        DAY,
        HOUR,
        INSTANT,
        AT,
        ZONE,
        ID,
        LIST,
        SET,
        MAP,
        SORTED_MAP,
        RECORD
    }

    private static final Map<Class<?>, Sort> PLAIN = Map.ofEntries(
            Map.entry(int.class, Sort.NUMBER),
            Map.entry(Integer.class, Sort.NUMBER),
            Map.entry(long.class, Sort.LONG),
            Map.entry(double.class, Sort.DOUBLE),
            Map.entry(String.class, Sort.TEXT),
            Map.entry(LocalDate.class, Sort.DAY),
            Map.entry(LocalTime.class, Sort.HOUR),
            Map.entry(Instant.class, Sort.INSTANT),
            Map.entry(OffsetDateTime.class, Sort.AT),
            Map.entry(ZoneId.class, Sort.ZONE),
            Map.entry(UUID.class, Sort.ID),
            Map.entry(List.class, Sort.LIST),
            Map.entry(Set.class, Sort.SET),
            Map.entry(Map.class, Sort.MAP),
            Map.entry(SortedMap.class, Sort.SORTED_MAP));

    private static final ClassValue<ValueForm> OF_CLASSES = new ClassValue<>() {
        @Override
        protected ValueForm computeValue(Class<?> type) {
            return new ValueForm(type, type, List.of());
        }
    };

    private final Class<?> type;
    private final Sort sort;
    private final List<Type> arguments;
    /** The shape of a record; found when first needed. */
    private @Nullable ValueShape shape;

    /** What is in a list or a map; found when first needed. */
    private @Nullable List<ValueForm> inside;

    private ValueForm(Class<?> type, Type generic, List<Type> arguments) {
        this.type = type;
        this.arguments = arguments;
        var plain = PLAIN.get(type);
        if (plain != null) {
            sort = plain;
        } else if (type.isEnum()) {
            sort = Sort.WORD;
        } else if (type.isRecord()) {
            sort = Sort.RECORD;
        } else {
            throw new IllegalArgumentException("No form in bytes for " + generic);
        }
    }

    static ValueForm of(Type type) {
        if (type instanceof Class<?> plain) {
            return OF_CLASSES.get(plain);
        }
        if (type instanceof ParameterizedType of) {
            return new ValueForm((Class<?>) of.getRawType(), of, List.of(of.getActualTypeArguments()));
        }
        throw new IllegalArgumentException("No form in bytes for " + type);
    }

    private ValueForm inside(int index) {
        var forms = inside;
        if (forms == null) {
            forms = arguments.stream().map(ValueForm::of).toList();
            inside = forms;
        }
        return forms.get(index);
    }

    private ValueShape shape() {
        var found = shape;
        if (found == null) {
            found = new ValueShape(type);
            shape = found;
        }
        return found;
    }

    private Object word(String text) throws IOException {
        var word = Words.in(type).get(text);
        if (word == null) {
            throw new IOException("No " + type + " is called " + text);
        }
        return word;
    }

    void write(ValueOut out, Object value) throws IOException {
        switch (sort) {
            case NUMBER, LONG -> out.number(((Number) value).longValue());
            case DOUBLE -> out.out().writeDouble((Double) value);
            case TEXT -> out.text((String) value);
            case WORD -> out.text(Words.of((Enum<?>) value));
            case DAY -> out.number(((LocalDate) value).toEpochDay());
            case HOUR -> out.number(((LocalTime) value).toNanoOfDay());
            case INSTANT -> instant(out, (Instant) value);
            case AT -> {
                var at = (OffsetDateTime) value;
                instant(out, at.toInstant());
                out.number(at.getOffset().getTotalSeconds());
            }
            case ZONE -> out.text(((ZoneId) value).getId());
            case ID -> {
                out.out().writeLong(((UUID) value).getMostSignificantBits());
                out.out().writeLong(((UUID) value).getLeastSignificantBits());
            }
            case LIST, SET -> {
                var all = (java.util.Collection<?>) value;
                out.number(all.size());
                for (var each : all) {
                    inside(0).write(out, each);
                }
            }
            case MAP, SORTED_MAP -> {
                var all = (Map<?, ?>) value;
                out.number(all.size());
                for (var each : all.entrySet()) {
                    inside(0).write(out, each.getKey());
                    inside(1).write(out, each.getValue());
                }
            }
            case RECORD -> shape().write(out, (Record) value);
        }
    }

    private static void instant(ValueOut out, Instant at) throws IOException {
        out.number(at.getEpochSecond());
        out.number(at.getNano());
    }

    Object read(ValueIn in) throws IOException {
        return switch (sort) {
            case NUMBER -> in.count();
            case LONG -> in.number();
            case DOUBLE -> in.in().readDouble();
            case TEXT -> in.text();
            case WORD -> word(in.text());
            case DAY -> LocalDate.ofEpochDay(in.number());
            case HOUR -> LocalTime.ofNanoOfDay(in.number());
            case INSTANT -> instant(in);
            case AT -> OffsetDateTime.ofInstant(instant(in), ZoneOffset.ofTotalSeconds(in.count()));
            case ZONE -> ZoneId.of(in.text());
            case ID -> new UUID(in.in().readLong(), in.in().readLong());
            case LIST -> into(in, new ArrayList<>());
            case SET -> into(in, new LinkedHashSet<>());
            case MAP -> into(in, new LinkedHashMap<>());
            case SORTED_MAP -> into(in, new TreeMap<>());
            case RECORD -> shape().read(in);
        };
    }

    private static Instant instant(ValueIn in) throws IOException {
        return Instant.ofEpochSecond(in.number(), in.number());
    }

    private java.util.Collection<Object> into(ValueIn in, java.util.Collection<Object> all) throws IOException {
        for (int left = in.count(); left > 0; left--) {
            all.add(inside(0).read(in));
        }
        return all;
    }

    private Map<Object, Object> into(ValueIn in, Map<Object, Object> all) throws IOException {
        for (int left = in.count(); left > 0; left--) {
            all.put(inside(0).read(in), inside(1).read(in));
        }
        return all;
    }
}
