package eggwright.wire;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import org.jspecify.annotations.Nullable;

/** The components of a record in order, each with a 0 where it is absent and a 1 before it where it is not. */
final class ValueShape {
    private final RecordComponent[] components;
    private final ValueForm[] forms;
    private final Constructor<?> constructor;

    ValueShape(Class<?> type) {
        components = type.getRecordComponents();
        forms = new ValueForm[components.length];
        var types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
        }
        try {
            constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException("A record without its constructor: " + type, impossible);
        }
    }

    /** Found when first met: what is never there, such as a list that is always empty, needs no form. */
    private ValueForm form(int index) {
        var form = forms[index];
        if (form == null) {
            form = ValueForm.of(components[index].getGenericType());
            forms[index] = form;
        }
        return form;
    }

    void write(ValueOut out, Record record) throws IOException {
        for (int i = 0; i < components.length; i++) {
            var value = value(record, i);
            if (!components[i].getType().isPrimitive()) {
                out.out().writeByte(value == null ? 0 : 1);
            }
            if (value != null) {
                form(i).write(out, value);
            }
        }
    }

    private @Nullable Object value(Record record, int index) {
        try {
            var accessor = components[index].getAccessor();
            accessor.setAccessible(true);
            return accessor.invoke(record);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("A record hides " + components[index], impossible);
        }
    }

    Object read(ValueIn in) throws IOException {
        var values = new @Nullable Object[components.length];
        for (int i = 0; i < values.length; i++) {
            if (components[i].getType().isPrimitive() || in.in().readByte() != 0) {
                values[i] = form(i).read(in);
            }
        }
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException refused) {
            throw new IOException("These values are not of " + constructor, refused);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("A record cannot be made: " + constructor, impossible);
        }
    }
}
