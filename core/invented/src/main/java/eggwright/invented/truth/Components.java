package eggwright.invented.truth;

import eggwright.units.OutOfRange;
import java.lang.reflect.InvocationTargetException;
import java.util.Arrays;
import java.util.List;

/**
 * Reads and rebuilds records by their components, so that the text of a truth and its copies follow the records by
 * themselves. A record refuses a value as its constructor does.
 */
final class Components {
    private Components() {}

    static List<String> names(Class<? extends Record> type) {
        return Arrays.stream(type.getRecordComponents()).map(c -> c.getName()).toList();
    }

    static Object value(Record record, String component) {
        for (var c : record.getClass().getRecordComponents()) {
            if (c.getName().equals(component)) {
                try {
                    return c.getAccessor().invoke(record);
                } catch (ReflectiveOperationException fault) {
                    throw new IllegalStateException(fault);
                }
            }
        }
        throw new IllegalStateException(record.getClass() + " has no " + component);
    }

    /** A copy with one component changed. */
    static <R extends Record> R with(R record, String component, Object value) {
        @SuppressWarnings("unchecked") // The class of a record of type R, which is final.
        var type = (Class<R>) record.getClass();
        var values = names(type).stream()
                .map(n -> n.equals(component) ? value : value(record, n))
                .toArray();
        return make(type, values);
    }

    static <R extends Record> R make(Class<R> type, Object[] values) {
        var types =
                Arrays.stream(type.getRecordComponents()).map(c -> c.getType()).toArray(Class<?>[]::new);
        try {
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof OutOfRange why) {
                throw why;
            }
            throw new IllegalStateException(refused);
        } catch (ReflectiveOperationException fault) {
            throw new IllegalStateException(fault);
        }
    }
}
