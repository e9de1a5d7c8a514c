package eggwright.desk.intake;

import eggwright.desk.form.Field;
import eggwright.desk.form.Form;
import eggwright.desk.part.NoticeShown;
import eggwright.desk.part.TableShown;
import java.util.List;
import java.util.Optional;

/**
 * A logger's file as it would be read.
 *
 * @param state what can be said of it as a whole
 * @param questions what is to be said before it can be taken, or what is wrong with it
 * @param notes what was taken for granted
 * @param some its first rows; empty where none can be told
 * @param form place, columns, dates, zone; empty where it cannot be read at all
 */
public record FilePage(
        String name,
        Optional<NoticeShown> state,
        List<String> questions,
        List<String> notes,
        Optional<TableShown> some,
        Optional<Form> form) {
    /** The button that only looks. */
    public static final String LOOK = "look";

    public FilePage {
        questions = List.copyOf(questions);
        notes = List.copyOf(notes);
    }

    /** The fields of the columns. */
    public List<Field> columns() {
        return form.stream()
                .flatMap(f -> f.fields().stream())
                .filter(field -> field.name().startsWith(FileForm.COLUMN))
                .toList();
    }

    /** The other fields. */
    public List<Field> others() {
        return form.stream()
                .flatMap(f -> f.fields().stream())
                .filter(field -> !field.name().startsWith(FileForm.COLUMN))
                .toList();
    }
}
