package eggwright.wire;

import org.jspecify.annotations.Nullable;

/** Where a value stands in an entry, put into words only when there is something to say of it. */
final class FieldPath {
    /** The payload itself. */
    static final FieldPath TOP = new FieldPath(null, "");

    /** Absent at the top. */
    private final @Nullable FieldPath above;

    private final String step;

    private FieldPath(@Nullable FieldPath above, String step) {
        this.above = above;
        this.step = step;
    }

    static FieldPath of(String field) {
        return TOP.inside(field);
    }

    FieldPath inside(String key) {
        return new FieldPath(this, key);
    }

    FieldPath at(int index) {
        return new FieldPath(this, "[" + index + "]");
    }

    boolean isTop() {
        return above == null;
    }

    /** As {@code findings[2].seen}. */
    @Override
    public String toString() {
        var before = above == null ? "" : above.toString();
        return before.isEmpty() || step.startsWith("[") ? before + step : before + "." + step;
    }
}
