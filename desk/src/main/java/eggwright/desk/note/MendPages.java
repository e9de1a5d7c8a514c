package eggwright.desk.note;

import eggwright.book.entry.Replaced;
import eggwright.book.entry.Withdrawn;
import eggwright.book.fold.Effective;
import eggwright.book.name.EntryId;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.form.Field;
import eggwright.desk.form.Form;
import eggwright.desk.form.Typed;
import eggwright.desk.who.May;
import eggwright.units.OutOfRange;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/** A kept note mended by its own form, filled in as it stands; or withdrawn. */
final class MendPages implements Pages {
    private static final String SAW = "saw";

    private final Keeping keeping;

    MendPages(Keeping keeping) {
        this.keeping = keeping;
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/entries/{id}/mend", May.NOTE, visit -> ofMendable(visit, this::openMend));
        routes.write("/entries/{id}/mend", May.NOTE, visit -> ofMendable(visit, this::keepMend));
        routes.read("/entries/{id}/withdraw", May.NOTE, this::openWithdrawal);
        routes.write("/entries/{id}/withdraw", May.NOTE, this::keepWithdrawal);
    }

    /** Of an entry that is there: whether another noted it, and this visitor may not change it. */
    private boolean isAnothers(Visit visit) {
        return keeping.entry(visit)
                .filter(entry -> !Rights.mayChange(visit.visitor(), entry.entry()))
                .isPresent();
    }

    private record Mendable(Visit visit, Effective entry, EntryForm kind) {}

    private Answer ofMendable(Visit visit, BiFunction<Mendable, Around, Answer> route) {
        if (isAnothers(visit)) {
            return new Answer.NotYours();
        }
        return keeping.entry(visit)
                .flatMap(entry ->
                        EntryForms.of(entry.payload().kindWord()).map(kind -> new Mendable(visit, entry, kind)))
                .map(it -> route.apply(it, keeping.around(visit)))
                .orElseGet(() -> new Answer.NotThere(Optional.of(visit.at("id"))));
    }

    private Answer openMend(Mendable it, Around around) {
        return page(200, it, around, mending(it, around));
    }

    private static Answer page(int status, Mendable it, Around around, Form form) {
        return Keeping.page(status, it.kind(), around, form, "mend.title");
    }

    private Form mending(Mendable it, Around around) {
        var entry = it.entry();
        var fields = new ArrayList<>(it.kind().fields(around));
        fields.addAll(keeping.always(it.visit(), around));
        var local = entry.at().atZoneSameInstant(around.now().getZone()).toLocalDateTime();
        return Form.of(
                        path(entry, "mend"),
                        keeping.book().freshId().toString(),
                        around.say("mend.keep"),
                        fields.toArray(Field[]::new))
                .filledFrom(it.kind().written(entry.payload(), around.now().getZone()))
                .filledFrom(Typed.of(Map.of(
                        Keeping.HAPPENED, local.truncatedTo(ChronoUnit.MINUTES).toString())));
    }

    /** Names the version that was seen, so that two mends of one entry are told apart. */
    private static String path(Effective entry, String what) {
        return "/entries/" + entry.id() + "/" + what + "?" + SAW + "=" + entry.shown();
    }

    private static EntryId saw(Visit visit, Effective entry) {
        try {
            return EntryId.parse(visit.asked().text(SAW));
        } catch (OutOfRange none) {
            return entry.shown();
        }
    }

    private Answer keepMend(Mendable it, Around around) {
        var visit = it.visit();
        var entry = it.entry();
        var form = mending(it, around).filledFrom(visit.typed());
        var reader = keeping.reader(visit).mending(it.kind().moments(entry.payload()));
        var read = Keeping.read(it.kind(), reader);
        var happened = Keeping.happened(reader, around);
        if (Form.isToBeShownAgain(visit.typed())) {
            return page(200, it, around, Keeping.again(form, visit, reader));
        }
        var who = keeping.who(visit, reader);
        if (read.isEmpty() || !reader.toMend().isEmpty()) {
            return page(422, it, around, form.toMend(reader.toMend()));
        }
        var unchanged = happened.toInstant().equals(entry.instant().truncatedTo(ChronoUnit.MINUTES));
        return keeping.note(
                visit,
                form,
                around.now().toOffsetDateTime(),
                new Replaced(entry.id(), saw(visit, entry), unchanged ? entry.at() : happened, read.get()),
                who,
                id -> "/entries/" + id,
                refused -> page(503, it, around, refused));
    }

    private Answer openWithdrawal(Visit visit) {
        if (isAnothers(visit)) {
            return new Answer.NotYours();
        }
        return keeping.entry(visit)
                .map(entry -> withdrawal(200, visit, entry, withdrawing(visit, entry, keeping.around(visit))))
                .orElseGet(() -> new Answer.NotThere(Optional.of(visit.at("id"))));
    }

    private Form withdrawing(Visit visit, Effective entry, Around around) {
        return Form.of(
                path(entry, "withdraw"),
                keeping.book().freshId().toString(),
                around.say("withdraw.keep"),
                new Asks(around).remark("why"),
                keeping.who(visit, around));
    }

    private static Answer withdrawal(int status, Visit visit, Effective entry, Form form) {
        var words = Keeping.words(visit);
        return new Answer.Page(
                status,
                "note/page.jte",
                new NotePage(
                        words.say("withdraw.title"),
                        words.say("withdraw.intro", Keeping.title(entry.payload(), words)),
                        form,
                        List.of()));
    }

    private Answer keepWithdrawal(Visit visit) {
        if (isAnothers(visit)) {
            return new Answer.NotYours();
        }
        return keeping.entry(visit)
                .map(entry -> keepWithdrawal(visit, entry))
                .orElseGet(() -> new Answer.NotThere(Optional.of(visit.at("id"))));
    }

    private Answer keepWithdrawal(Visit visit, Effective entry) {
        var around = keeping.around(visit);
        var form = withdrawing(visit, entry, around).filledFrom(visit.typed());
        var reader = keeping.reader(visit);
        if (Form.isToBeShownAgain(visit.typed())) {
            return withdrawal(200, visit, entry, Keeping.again(form, visit, reader));
        }
        var who = keeping.who(visit, reader);
        if (!reader.toMend().isEmpty()) {
            return withdrawal(422, visit, entry, form.toMend(reader.toMend()));
        }
        return keeping.note(
                visit,
                form,
                around.now().toOffsetDateTime(),
                new Withdrawn(entry.id(), saw(visit, entry), reader.text("why")),
                who,
                id -> "/book/" + entry.id(),
                refused -> withdrawal(503, visit, entry, refused));
    }
}
