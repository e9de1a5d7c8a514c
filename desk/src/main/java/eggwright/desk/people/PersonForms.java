package eggwright.desk.people;

import eggwright.book.name.BuyerNumber;
import eggwright.book.store.Buyer;
import eggwright.desk.form.Field.Line;
import eggwright.desk.form.Form;
import eggwright.desk.form.Typed;
import eggwright.desk.words.RefusalWords;
import eggwright.desk.words.Words;
import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.List;

/** The form of a buyer. */
final class PersonForms {
    static final String NUMBER = "number";
    private static final String NAME = "name";
    private static final String ADDRESS = "address";
    private static final String NOTE = "note";

    private final String path;

    PersonForms(String path) {
        this.path = path;
    }

    /** What was typed, read. */
    sealed interface Read {
        record Right(Buyer buyer) implements Read {}

        record Wrong(List<Form.ToMend> toMend) implements Read {}
    }

    Form blank(String number, Words words) {
        return Form.of(
                path + "/new",
                "",
                words.say("new.keep"),
                Line.text(NUMBER, words.say("field.number"))
                        .withHint(words.say("hint.number"))
                        .withValue(number),
                name(words),
                address(words),
                note(words));
    }

    /** The number stays: it stands in the book. */
    Form of(Buyer buyer, String action, Words words) {
        return Form.of(
                action,
                "",
                words.say("change.keep"),
                name(words).withValue(buyer.name()),
                address(words).withValue(buyer.address()),
                note(words).withValue(buyer.note()));
    }

    private static Line name(Words words) {
        return Line.text(NAME, words.say("field.name"));
    }

    private static Line address(Words words) {
        return Line.remark(ADDRESS, words.say("field.address"));
    }

    private static Line note(Words words) {
        return Line.text(NOTE, words.say("field.note")).optional().withHint(words.say("hint.note"));
    }

    Read read(Typed typed, Words words) {
        if (typed.text(NUMBER).isEmpty()) {
            return new Read.Wrong(List.of(new Form.ToMend(NUMBER, words.say("number.needed"))));
        }
        try {
            return read(typed, new BuyerNumber(typed.text(NUMBER)), words);
        } catch (OutOfRange refused) {
            return new Read.Wrong(List.of(new Form.ToMend(NUMBER, new RefusalWords(words.language()).say(refused))));
        }
    }

    Read read(Typed typed, BuyerNumber number, Words words) {
        var toMend = new ArrayList<Form.ToMend>();
        if (typed.text(NAME).isEmpty()) {
            toMend.add(new Form.ToMend(NAME, words.say("name.needed")));
        }
        for (var field : List.of(NAME, ADDRESS, NOTE)) {
            int length = typed.text(field).length();
            if (length > Buyer.LONGEST) {
                toMend.add(new Form.ToMend(field, words.say("tooLong", length, Buyer.LONGEST)));
            }
        }
        return toMend.isEmpty()
                ? new Read.Right(new Buyer(number, typed.text(NAME), typed.text(ADDRESS), typed.text(NOTE)))
                : new Read.Wrong(toMend);
    }
}
