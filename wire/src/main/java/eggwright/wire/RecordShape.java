package eggwright.wire;

import eggwright.units.Humidity;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How one record is written: its components in order under snake-case keys. Found once for each record. */
final class RecordShape {
    private static final ClassValue<RecordShape> SHAPES = new ClassValue<>() {
        @Override
        protected RecordShape computeValue(Class<?> type) {
            return new RecordShape(type);
        }
    };

    /** What it means that a key is left out. */
    enum WhereAbsent {
        REFUSED,
        ABSENT,
        EMPTY_LIST
    }

    /**
     * One component.
     *
     * @param key as written
     * @param element what a list holds; for all else the type itself
     */
    record Field(String key, Class<?> type, Class<?> element, WhereAbsent whereAbsent, Method accessor) {
        @Nullable Object of(Record record) {
            try {
                return accessor.invoke(record);
            } catch (ReflectiveOperationException impossible) {
                throw new IllegalStateException("A record hides " + key, impossible);
            }
        }
    }

    private final List<Field> fields = new ArrayList<>();
    private final Constructor<?> constructor;

    private RecordShape(Class<?> type) {
        var components = type.getRecordComponents();
        var types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            fields.add(field(components[i]));
        }
        try {
            constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException("A record without its constructor: " + type, impossible);
        }
    }

    static RecordShape of(Class<?> type) {
        return SHAPES.get(type);
    }

    List<Field> fields() {
        return fields;
    }

    /** Makes the record; what its constructor throws comes through. */
    Object make(@Nullable Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof RuntimeException why) {
                throw why;
            }
            throw new IllegalStateException("A record cannot be made: " + constructor, refused);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("A record cannot be made: " + constructor, impossible);
        }
    }

    private static Field field(RecordComponent component) {
        var name = Words.snake(component.getName());
        var type = component.getType();
        var accessor = component.getAccessor();
        accessor.setAccessible(true);
        return new Field(
                type == Humidity.class ? name + "_pct" : name,
                type,
                component.getGenericType() instanceof ParameterizedType list
                        ? (Class<?>) list.getActualTypeArguments()[0]
                        : type,
                whereAbsent(component),
                accessor);
    }

    private static WhereAbsent whereAbsent(RecordComponent component) {
        if (component.getAnnotatedType().isAnnotationPresent(Nullable.class)) {
            return WhereAbsent.ABSENT;
        }
        return component.getType() == List.class ? WhereAbsent.EMPTY_LIST : WhereAbsent.REFUSED;
    }
}
