package eggwright.desk.note;

import eggwright.desk.form.Form;
import eggwright.desk.part.CautionShown;
import java.util.List;

/**
 * One form, open.
 *
 * @param intro one sentence on what is asked
 * @param cautions that belong to this work
 */
public record NotePage(String title, String intro, Form form, List<CautionShown> cautions) {
    public NotePage {
        cautions = List.copyOf(cautions);
    }
}
