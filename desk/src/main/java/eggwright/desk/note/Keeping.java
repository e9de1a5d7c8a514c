package eggwright.desk.note;

import eggwright.book.entry.Payload;
import eggwright.book.fold.Effective;
import eggwright.book.name.DeviceName;
import eggwright.book.name.EntryId;
import eggwright.book.name.PenName;
import eggwright.book.name.PersonName;
import eggwright.book.store.BuyerStore;
import eggwright.book.store.Refusal;
import eggwright.desk.Answer;
import eggwright.desk.Visit;
import eggwright.desk.form.Field;
import eggwright.desk.form.Form;
import eggwright.desk.live.LiveBook;
import eggwright.desk.part.CautionShown;
import eggwright.desk.words.Words;
import eggwright.trade.Species;
import eggwright.trade.caution.Cautions;
import eggwright.units.OutOfRange;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** What noting, mending and withdrawing share: what a form is opened in, how it is read, and how it is kept. */
final class Keeping {
    static final String HAPPENED = "happened";
    static final String WHO = "who";

    private final LiveBook book;
    private final BuyerStore buyers;
    /** Who noted last on each device: offered in its next form. */
    private final Map<DeviceName, String> lastPerson = new ConcurrentHashMap<>();

    Keeping(LiveBook book, BuyerStore buyers) {
        this.book = book;
        this.buyers = buyers;
    }

    LiveBook book() {
        return book;
    }

    static Words words(Visit visit) {
        return Words.beside(Keeping.class, visit.language());
    }

    Around around(Visit visit) {
        return new Around(book.picture(), buyers.all(), book.time(), words(visit), visit.asked());
    }

    /** What every form asks: when it happened, and who notes it. */
    List<Field> always(Visit visit, Around around) {
        return List.of(
                new Asks(around)
                        .moment(HAPPENED)
                        .withValue(around.now()
                                .toLocalDateTime()
                                .truncatedTo(ChronoUnit.MINUTES)
                                .toString()),
                who(visit, around));
    }

    Field who(Visit visit, Around around) {
        var last = lastPerson.getOrDefault(visit.visitor().device(), "");
        return new Asks(around).text(WHO).optional().withValue(last);
    }

    FormReader reader(Visit visit) {
        return new FormReader(visit.typed(), words(visit), book.zone(), this::speciesOf);
    }

    /** What a pen holds, where that was noted. */
    private Optional<Species> speciesOf(PenName pen) {
        return Optional.ofNullable(book.picture().pens().get(pen)).flatMap(p -> Optional.ofNullable(p.species()));
    }

    static Optional<Payload> read(EntryForm kind, FormReader reader) {
        try {
            return Optional.of(kind.read(reader));
        } catch (OutOfRange refused) {
            reader.mend("", refused);
            return Optional.empty();
        }
    }

    /** A form sent for more rows or other colours, with what was said of it before. */
    static Form again(Form form, Visit visit, FormReader reader) {
        return form.shownAgain(visit.typed(), reader.toMend(), words(visit).say("refused.still"));
    }

    static OffsetDateTime happened(FormReader reader, Around around) {
        var happened = reader.momentOrNone(HAPPENED);
        return happened == null ? around.now().toOffsetDateTime().truncatedTo(ChronoUnit.SECONDS) : happened;
    }

    PersonName who(Visit visit, FormReader reader) {
        var who = reader.nameOrNone(WHO, PersonName::new);
        if (who != null) {
            lastPerson.put(visit.visitor().device(), who.text());
        }
        return who == null ? LiveBook.nobodyNamed() : who;
    }

    /** Notes it under the id that the form was opened with, and goes on; or shows the form again with why it was not kept. */
    Answer note(
            Visit visit,
            Form form,
            OffsetDateTime happened,
            Payload payload,
            PersonName who,
            Function<EntryId, String> onward,
            Function<Form, Answer> notKept) {
        return switch (book.note(
                id(form), happened, payload, who, visit.visitor().device())) {
            case LiveBook.Noted.Kept(var id) -> new Answer.Onward(onward.apply(id) + "?kept=now");
            case LiveBook.Noted.KeptBefore(var id) -> new Answer.Onward(onward.apply(id) + "?kept=before");
            case LiveBook.Noted.NotKept(var why) ->
                notKept.apply(form.toMend(List.of(new Form.ToMend("", refused(why, words(visit))))));
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

    /** The entry of the path, as the book holds it. */
    Optional<Effective> entry(Visit visit) {
        try {
            var id = EntryId.parse(visit.at("id"));
            return book.ask(ledger -> ledger.trail(id).flatMap(trail -> ledger.effective(trail.target())));
        } catch (OutOfRange notAnId) {
            return Optional.empty();
        }
    }

    static String title(Payload payload, Words words) {
        var key = "kind." + payload.kindWord();
        return words.knows(key) ? words.say(key) : payload.kindWord();
    }

    static Answer.Page page(int status, EntryForm kind, Around around, Form form, String titleKey) {
        var intro = "intro." + kind.kind();
        return new Answer.Page(
                status,
                "note/page.jte",
                new NotePage(
                        around.say(titleKey),
                        around.words().knows(intro) ? around.say(intro) : "",
                        form,
                        kind.cautions().stream()
                                .map(place -> CautionShown.of(
                                        Cautions.at(place), around.words().language()))
                                .toList()));
    }
}
