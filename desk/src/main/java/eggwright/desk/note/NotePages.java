package eggwright.desk.note;

import eggwright.book.entry.Payload;
import eggwright.book.entry.Replaced;
import eggwright.book.entry.Withdrawn;
import eggwright.book.fold.Effective;
import eggwright.book.name.EntryId;
import eggwright.book.name.PersonName;
import eggwright.book.picture.Discrepancy;
import eggwright.book.store.Refusal;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.form.Field;
import eggwright.desk.form.Form;
import eggwright.desk.form.Typed;
import eggwright.desk.live.LiveBook;
import eggwright.desk.part.CautionShown;
import eggwright.desk.part.NoticeShown;
import eggwright.desk.who.May;
import eggwright.desk.words.Words;
import eggwright.trade.caution.Cautions;
import eggwright.units.OutOfRange;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The forms: opened, sent back, shown as kept, mended, withdrawn. */
public final class NotePages implements Pages {
    private static final String HAPPENED = "happened";
    private static final String WHO = "who";
    private static final String SAW = "saw";

    private final LiveBook book;
    private final Function<Discrepancy, String> doubtWords;
    /** Who noted last at this desk: offered in the next form. */
    private volatile String lastPerson = "";

    /**
     * @param doubtWords a discrepancy in words
     */
    public NotePages(LiveBook book, Function<Discrepancy, String> doubtWords) {
        this.book = book;
        this.doubtWords = doubtWords;
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/notes", May.NOTE, this::list);
        routes.read("/notes/{kind}", May.NOTE, this::open);
        routes.write("/notes/{kind}", May.NOTE, this::keep);
        routes.read("/entries/{id}", May.READ, this::kept);
        routes.read("/entries/{id}/mend", May.NOTE, this::openMend);
        routes.write("/entries/{id}/mend", May.NOTE, this::keepMend);
        routes.read("/entries/{id}/withdraw", May.NOTE, this::openWithdrawal);
        routes.write("/entries/{id}/withdraw", May.NOTE, this::keepWithdrawal);
    }

    private Words words(Visit visit) {
        return Words.beside(NotePages.class, visit.language());
    }

    private Around around(Visit visit) {
        return new Around(book.picture(), book.time(), words(visit), visit.asked());
    }

    private Answer list(Visit visit) {
        var words = words(visit);
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
        return EntryForms.of(kind)
                .<Answer>map(form -> page(200, form, around(visit), blank(form, around(visit)), "kind." + kind))
                .orElseGet(() -> new Answer.NotThere(Optional.of(kind)));
    }

    private Form blank(EntryForm form, Around around) {
        var fields = new ArrayList<>(form.fields(around));
        fields.addAll(always(around));
        return Form.of(
                "/notes/" + form.kind(), book.freshId().toString(), around.say("keep"), fields.toArray(Field[]::new));
    }

    private List<Field> always(Around around) {
        var asks = new Asks(around);
        return List.of(
                asks.moment(HAPPENED)
                        .withValue(around.now()
                                .toLocalDateTime()
                                .truncatedTo(ChronoUnit.MINUTES)
                                .toString()),
                asks.text(WHO).optional().withValue(lastPerson));
    }

    private static Answer.Page page(int status, EntryForm kind, Around around, Form form, String titleKey) {
        var intro = "intro." + kind.kind();
        return new Answer.Page(
                status,
                "note/page.jte",
                new NotePage(
                        around.say(titleKey),
                        around.words().knows(intro) ? around.say(intro) : "",
                        form,
                        cautions(kind, around.words())));
    }

    private static List<CautionShown> cautions(EntryForm form, Words words) {
        return form.cautions().stream()
                .map(place -> CautionsWorded.of(Cautions.at(place), words))
                .toList();
    }

    private Answer keep(Visit visit) {
        var found = EntryForms.of(visit.at("kind"));
        if (found.isEmpty()) {
            return new Answer.NotThere(Optional.of(visit.at("kind")));
        }
        var kind = found.get();
        if (!Rights.mayNote(visit.visitor(), kind.kind())) {
            return new Answer.NotYours();
        }
        var around = around(visit);
        var form = blank(kind, around).filledFrom(visit.typed());
        if (Form.asksForMore(visit.typed())) {
            return page(200, kind, around, form, "kind." + kind.kind());
        }
        var reader = reader(visit);
        var read = read(kind, reader);
        var happened = happened(reader, around);
        var who = who(reader);
        if (read.isEmpty() || !reader.toMend().isEmpty()) {
            return page(422, kind, around, form.toMend(reader.toMend()), "kind." + kind.kind());
        }
        var noted =
                book.note(id(form), happened, read.get(), who, visit.visitor().device());
        return answer(
                noted,
                why -> page(
                        503,
                        kind,
                        around,
                        form.toMend(List.of(new Form.ToMend("", refused(why, words(visit))))),
                        "kind." + kind.kind()));
    }

    private FormReader reader(Visit visit) {
        return new FormReader(
                visit.typed(), words(visit), book.picture().farm().habits().zone());
    }

    private static Optional<Payload> read(EntryForm kind, FormReader reader) {
        try {
            return Optional.of(kind.read(reader));
        } catch (OutOfRange refused) {
            reader.mendInWords("", String.valueOf(refused.getMessage()));
            return Optional.empty();
        }
    }

    private static OffsetDateTime happened(FormReader reader, Around around) {
        var happened = reader.momentOrNone(HAPPENED);
        return happened == null ? around.now().toOffsetDateTime().truncatedTo(ChronoUnit.SECONDS) : happened;
    }

    private PersonName who(FormReader reader) {
        var who = reader.nameOrNone(WHO, PersonName::new);
        if (who != null) {
            lastPerson = who.text();
        }
        return who == null ? LiveBook.nobodyNamed() : who;
    }

    private static Answer answer(LiveBook.Noted noted, Function<Refusal, Answer> notKept) {
        return switch (noted) {
            case LiveBook.Noted.Kept(var id) -> new Answer.Onward("/entries/" + id + "?kept=now");
            case LiveBook.Noted.KeptBefore(var id) -> new Answer.Onward("/entries/" + id + "?kept=before");
            case LiveBook.Noted.NotKept(var why) -> notKept.apply(why);
        };
    }

    /** The id made when the form was opened; a fresh one where the browser sent something else. */
    private EntryId id(Form form) {
        try {
            return EntryId.parse(form.entryId());
        } catch (OutOfRange notAnId) {
            return book.freshId();
        }
    }

    private static String refused(Refusal why, Words words) {
        return switch (why) {
            case Refusal.OtherContent other -> words.say("refused.otherContent");
            case Refusal.OtherFarm other -> words.say("refused.otherFarm", other.ours(), other.offered());
            case Refusal.NotSaved(var reason) -> words.say("refused.notSaved", reason);
        };
    }

    /** An entry as the book holds it. */
    private Optional<Effective> entry(Visit visit) {
        try {
            var id = EntryId.parse(visit.at("id"));
            return book.ask(ledger -> ledger.trail(id).flatMap(trail -> ledger.effective(trail.target())));
        } catch (OutOfRange notAnId) {
            return Optional.empty();
        }
    }

    private Answer kept(Visit visit) {
        var found = entry(visit);
        if (found.isEmpty()) {
            return new Answer.NotThere(Optional.of(visit.at("id")));
        }
        var entry = found.get();
        var words = words(visit);
        var doubts = book.picture().discrepancies().stream()
                .filter(d -> d.entries().contains(entry.id()))
                .map(doubtWords)
                .toList();
        var notice = switch (visit.asked().text("kept")) {
            case "now" -> NoticeShown.kept(words.say("kept.now"));
            case "before" -> NoticeShown.kept(words.say("kept.before"));
            default -> NoticeShown.kept(words.say("kept.shown", entry.entry().who()));
        };
        return new Answer.Page(
                200,
                "note/kept.jte",
                new KeptPage(
                        title(entry.payload(), words),
                        notice,
                        lines(entry, around(visit)),
                        doubts,
                        "/entries/" + entry.id() + "/mend",
                        next(entry, words)));
    }

    private static String title(Payload payload, Words words) {
        var key = "kind." + payload.kindWord();
        return words.knows(key) ? words.say(key) : payload.kindWord();
    }

    private List<KeptPage.Line> lines(Effective entry, Around around) {
        var form = EntryForms.of(entry.payload().kindWord());
        var lines = new ArrayList<KeptPage.Line>();
        form.ifPresent(f -> {
            var filled =
                    Form.of("", "", "", f.fields(around).toArray(Field[]::new)).filledFrom(f.written(entry.payload()));
            filled.fields().forEach(field -> lines.addAll(KeptLines.of(field)));
        });
        lines.add(new KeptPage.Line(
                around.say("field." + HAPPENED),
                entry.at()
                        .atZoneSameInstant(around.now().getZone())
                        .toLocalDateTime()
                        .truncatedTo(ChronoUnit.MINUTES)
                        .toString()
                        .replace('T', ' ')));
        lines.add(new KeptPage.Line(
                around.say("field." + WHO), entry.entry().who().text()));
        return lines;
    }

    private static List<NoticeShown.Next> next(Effective entry, Words words) {
        var kind = entry.payload().kindWord();
        var next = new ArrayList<NoticeShown.Next>();
        if (EntryForms.of(kind).isPresent()) {
            next.add(new NoticeShown.Next("/notes/" + kind, words.say("next.another")));
        }
        next.add(new NoticeShown.Next("/", words.say("next.today")));
        return next;
    }

    /** Of an entry that is there: whether another noted it, and this visitor may not change it. */
    private boolean isAnothers(Visit visit) {
        return entry(visit)
                .filter(entry -> !Rights.mayChange(visit.visitor(), entry.entry()))
                .isPresent();
    }

    private Answer openMend(Visit visit) {
        if (isAnothers(visit)) {
            return new Answer.NotYours();
        }
        return entry(visit)
                .flatMap(entry -> EntryForms.of(entry.payload().kindWord()).map(kind ->
                        (Answer) page(200, kind, around(visit), mending(entry, kind, around(visit)), "mend.title")))
                .orElseGet(() -> new Answer.NotThere(Optional.of(visit.at("id"))));
    }

    private Form mending(Effective entry, EntryForm kind, Around around) {
        var fields = new ArrayList<>(kind.fields(around));
        fields.addAll(always(around));
        var local = entry.at().atZoneSameInstant(around.now().getZone()).toLocalDateTime();
        return Form.of(
                        "/entries/" + entry.id() + "/mend?" + SAW + "=" + entry.shown(),
                        book.freshId().toString(),
                        around.say("mend.keep"),
                        fields.toArray(Field[]::new))
                .filledFrom(kind.written(entry.payload()))
                .filledFrom(Typed.of(java.util.Map.of(
                        HAPPENED, local.truncatedTo(ChronoUnit.MINUTES).toString())));
    }

    private EntryId saw(Visit visit, Effective entry) {
        try {
            return EntryId.parse(visit.asked().text(SAW));
        } catch (OutOfRange none) {
            return entry.shown();
        }
    }

    private Answer keepMend(Visit visit) {
        var found = entry(visit);
        var kind = found.flatMap(e -> EntryForms.of(e.payload().kindWord()));
        if (found.isEmpty() || kind.isEmpty()) {
            return new Answer.NotThere(Optional.of(visit.at("id")));
        }
        var entry = found.get();
        if (isAnothers(visit)) {
            return new Answer.NotYours();
        }
        var around = around(visit);
        var form = mending(entry, kind.get(), around).filledFrom(visit.typed());
        if (Form.asksForMore(visit.typed())) {
            return page(200, kind.get(), around, form, "mend.title");
        }
        var reader = reader(visit);
        var read = read(kind.get(), reader);
        var happened = happened(reader, around);
        var who = who(reader);
        if (read.isEmpty() || !reader.toMend().isEmpty()) {
            return page(422, kind.get(), around, form.toMend(reader.toMend()), "mend.title");
        }
        var unchanged = happened.toInstant().equals(entry.instant().truncatedTo(ChronoUnit.MINUTES));
        var mend = new Replaced(entry.id(), saw(visit, entry), unchanged ? entry.at() : happened, read.get());
        var noted = book.note(
                id(form),
                around.now().toOffsetDateTime(),
                mend,
                who,
                visit.visitor().device());
        return answer(
                noted,
                why -> page(
                        503,
                        kind.get(),
                        around,
                        form.toMend(List.of(new Form.ToMend("", refused(why, words(visit))))),
                        "mend.title"));
    }

    private Answer openWithdrawal(Visit visit) {
        if (isAnothers(visit)) {
            return new Answer.NotYours();
        }
        return entry(visit)
                .<Answer>map(entry -> withdrawal(200, visit, entry, withdrawing(entry, around(visit))))
                .orElseGet(() -> new Answer.NotThere(Optional.of(visit.at("id"))));
    }

    private Form withdrawing(Effective entry, Around around) {
        var asks = new Asks(around);
        return Form.of(
                "/entries/" + entry.id() + "/withdraw?" + SAW + "=" + entry.shown(),
                book.freshId().toString(),
                around.say("withdraw.keep"),
                asks.remark("why"),
                asks.text(WHO).optional().withValue(lastPerson));
    }

    private static Answer.Page withdrawal(int status, Visit visit, Effective entry, Form form) {
        var words = Words.beside(NotePages.class, visit.language());
        return new Answer.Page(
                status,
                "note/page.jte",
                new NotePage(
                        words.say("withdraw.title"),
                        words.say("withdraw.intro", title(entry.payload(), words)),
                        form,
                        List.of()));
    }

    private Answer keepWithdrawal(Visit visit) {
        var found = entry(visit);
        if (found.isEmpty()) {
            return new Answer.NotThere(Optional.of(visit.at("id")));
        }
        var entry = found.get();
        if (isAnothers(visit)) {
            return new Answer.NotYours();
        }
        var around = around(visit);
        var form = withdrawing(entry, around).filledFrom(visit.typed());
        var reader = reader(visit);
        var who = who(reader);
        if (!reader.toMend().isEmpty()) {
            return withdrawal(422, visit, entry, form.toMend(reader.toMend()));
        }
        var noted = book.note(
                id(form),
                around.now().toOffsetDateTime(),
                new Withdrawn(entry.id(), saw(visit, entry), reader.text("why")),
                who,
                visit.visitor().device());
        return switch (noted) {
            case LiveBook.Noted.Kept kept -> new Answer.Onward("/book/" + entry.id());
            case LiveBook.Noted.KeptBefore before -> new Answer.Onward("/book/" + entry.id());
            case LiveBook.Noted.NotKept(var why) ->
                withdrawal(503, visit, entry, form.toMend(List.of(new Form.ToMend("", refused(why, words(visit))))));
        };
    }
}
