package eggwright.desk.form;

import eggwright.desk.Look;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * A form as it is shown. A page makes it blank, with the farm's usual values; what comes back is laid over it with {@link
 * #filledFrom}, and what is to be mended with {@link #toMend}, so a refused form shows everything typed.
 *
 * @param action the path it is sent to
 * @param entryId made when the form was opened; sent twice it keeps one entry
 * @param keep words of the button
 * @param fields in the order of the page
 * @param top what is to be mended, all at once; empty where nothing is
 */
public record Form(String action, String entryId, String keep, List<Field> fields, List<ToMend> top) {
    /** The id in the page: what stands outside can belong to it, as the choice of colours does. */
    public static final String ID = "entry";
    /** The name of the hidden field that holds the entry id. */
    public static final String ENTRY_ID = "entry_id";
    /** The name of the hidden field that says that the form was refused. */
    public static final String REFUSED = "refused";
    /** The name of the button that adds rows; its value is the name of the rows. */
    public static final String MORE = "more";

    public Form {
        fields = List.copyOf(fields);
        top = List.copyOf(top);
    }

    /**
     * Something to mend.
     *
     * @param name of the field, as {@code tray.2.eggs}; empty where it is of the whole form
     * @param message what happened, what was kept, what to do
     */
    public record ToMend(String name, String message) {
        public boolean isOfTheWhole() {
            return name.isEmpty();
        }

        /** Where in the page the field is. */
        public String anchor() {
            return "#f-" + name.replace('.', '-');
        }
    }

    public static Form of(String action, String entryId, String keep, Field... fields) {
        return new Form(action, entryId, keep, List.of(fields), List.of());
    }

    /** With what was typed, and with more rows where that was asked for. */
    public Form filledFrom(Typed typed) {
        var id = typed.one(ENTRY_ID).orElse(entryId);
        var filled = new Form(action, id, keep, fields, top).each(f -> f.filledFrom(typed));
        var more = typed.text(MORE);
        return filled.each(f -> f instanceof Field.Rows rows && rows.name().equals(more) ? rows.withMore() : f);
    }

    /** Whether a form was sent only to get more rows, or other colours: nothing is to be kept yet. */
    public static boolean isToBeShownAgain(Typed typed) {
        return !typed.text(MORE).isEmpty() || !typed.text(Look.FIELD).isEmpty();
    }

    /**
     * Shown again before anything is kept: what was said of it when it was refused is said again.
     *
     * @param found what is to be mended in it as it is now
     * @param notSaved what to say where it was refused though nothing is to be mended
     */
    public Form shownAgain(Typed typed, List<ToMend> found, String notSaved) {
        if (typed.text(REFUSED).isEmpty()) {
            return this;
        }
        return toMend(found.isEmpty() ? List.of(new ToMend("", notSaved)) : found);
    }

    /** With each message beside its field and all of them at the top. */
    public Form toMend(List<ToMend> messages) {
        var byName = new HashMap<String, String>();
        for (var m : messages) {
            byName.merge(m.name(), m.message(), (a, b) -> a + " " + b);
        }
        return new Form(action, entryId, keep, fields, messages).each(f -> said(f, byName));
    }

    public boolean isToBeMended() {
        return !top.isEmpty();
    }

    private static Field said(Field field, Map<String, String> byName) {
        var inside = field instanceof Field.Rows rows
                ? rows.eachField(f -> said(f, byName))
                : field instanceof Field.Fold fold ? fold.each(f -> said(f, byName)) : field;
        var message = byName.get(field.name());
        return message == null ? inside : inside.withMessage(message);
    }

    private Form each(UnaryOperator<Field> change) {
        return new Form(action, entryId, keep, fields.stream().map(change).toList(), top);
    }
}
