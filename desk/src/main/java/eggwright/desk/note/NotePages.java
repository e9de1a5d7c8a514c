package eggwright.desk.note;

import eggwright.book.picture.Discrepancy;
import eggwright.book.store.BuyerStore;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.form.Field;
import eggwright.desk.form.Form;
import eggwright.desk.live.LiveBook;
import eggwright.desk.who.May;
import java.util.ArrayList;
import java.util.Optional;
import java.util.function.Function;

/** The forms: listed, opened, kept or sent back; with the pages of what was kept. */
public final class NotePages implements Pages {
    private final LiveBook book;
    private final Keeping keeping;
    private final Pages kept;
    private final Pages mends;

    /**
     * @param buyers those that can be offered by name
     * @param doubtWords a discrepancy in words
     */
    public NotePages(LiveBook book, BuyerStore buyers, Function<Discrepancy, String> doubtWords) {
        this.book = book;
        this.keeping = new Keeping(book, buyers);
        this.kept = new KeptPages(keeping, doubtWords);
        this.mends = new MendPages(keeping);
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/notes", May.NOTE, NotePages::list);
        routes.read("/notes/{kind}", May.NOTE, this::open);
        routes.write("/notes/{kind}", May.NOTE, this::keep);
        kept.addTo(routes);
        mends.addTo(routes);
    }

    private static Answer list(Visit visit) {
        var words = Keeping.words(visit);
        var groups = new ArrayList<NoteList.Group>();
        for (var shelf : Shelf.values()) {
            var links = EntryForms.all().stream()
                    .filter(f -> f.shelf() == shelf && Rights.mayNote(visit.visitor(), f.kind()))
                    .map(f -> new NoteList.Link("/notes/" + f.kind(), words.say("kind." + f.kind())))
                    .toList();
            if (!links.isEmpty()) {
                groups.add(new NoteList.Group(words.say("shelf." + Asks.word(shelf)), links));
            }
        }
        return new Answer.Page(200, "note/list.jte", new NoteList(groups));
    }

    private Answer open(Visit visit) {
        var kind = visit.at("kind");
        if (!Rights.mayNote(visit.visitor(), kind)) {
            return new Answer.NotYours();
        }
        var around = keeping.around(visit);
        return EntryForms.of(kind)
                .<Answer>map(form -> Keeping.page(200, form, around, blank(form, visit, around), "kind." + kind))
                .orElseGet(() -> Answer.notThere(kind));
    }

    private Form blank(EntryForm form, Visit visit, Around around) {
        var fields = new ArrayList<>(form.fields(around));
        fields.addAll(keeping.always(visit, around));
        return Form.of(
                "/notes/" + form.kind(), book.freshId().toString(), around.say("keep"), fields.toArray(Field[]::new));
    }

    private Answer keep(Visit visit) {
        return EntryForms.of(visit.at("kind"))
                .map(kind -> keep(visit, kind))
                .orElseGet(() -> new Answer.NotThere(Optional.of(visit.at("kind"))));
    }

    private Answer keep(Visit visit, EntryForm kind) {
        if (!Rights.mayNote(visit.visitor(), kind.kind())) {
            return new Answer.NotYours();
        }
        var around = keeping.around(visit);
        var title = "kind." + kind.kind();
        var form = blank(kind, visit, around).filledFrom(visit.typed());
        var reader = keeping.reader(visit);
        var read = Keeping.read(kind, reader);
        var happened = Keeping.happened(reader, around);
        if (Form.isToBeShownAgain(visit.typed())) {
            return Keeping.page(200, kind, around, Keeping.again(form, visit, reader), title);
        }
        var who = keeping.who(visit, reader);
        if (read.isEmpty() || !reader.toMend().isEmpty()) {
            return Keeping.page(422, kind, around, form.toMend(reader.toMend()), title);
        }
        return keeping.note(
                visit,
                form,
                happened,
                read.get(),
                who,
                id -> "/entries/" + id,
                refused -> Keeping.page(503, kind, around, refused, title));
    }
}
