package eggwright.desk.people;

import eggwright.book.fold.Ledger;
import eggwright.book.name.BuyerNumber;
import eggwright.book.store.Buyer;
import eggwright.book.store.BuyerStore;
import eggwright.book.store.BuyerStore.Change;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.form.Form;
import eggwright.desk.live.LiveBook;
import eggwright.desk.part.NoticeShown;
import eggwright.desk.who.May;
import eggwright.desk.words.Words;
import eggwright.units.OutOfRange;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/** Buyers by name: the only page on which what is gone is gone. */
public final class PeoplePages implements Pages {
    private static final String PATH = "/settings/people";

    private final LiveBook book;
    private final BuyerStore buyers;
    private final PersonForms forms;

    public PeoplePages(LiveBook book, BuyerStore buyers) {
        this.book = book;
        this.buyers = buyers;
        this.forms = new PersonForms(PATH);
    }

    @Override
    public void addTo(Routes routes) {
        routes.read(PATH, May.RUN, this::list);
        routes.read(PATH + "/new", May.RUN, this::openNew);
        routes.write(PATH + "/new", May.RUN, this::keepNew);
        routes.read(PATH + "/{buyer}/change", May.RUN, visit -> one(visit, b -> open(visit, b)));
        routes.write(PATH + "/{buyer}/change", May.RUN, visit -> one(visit, b -> change(visit, b)));
        routes.read(PATH + "/{buyer}/erase", May.RUN, visit -> one(visit, b -> openErasing(visit, b)));
        routes.write(PATH + "/{buyer}/erase", May.RUN, visit -> one(visit, b -> erase(visit, b)));
    }

    private static Words words(Visit visit) {
        return Words.beside(PeoplePages.class, visit.language());
    }

    private Answer list(Visit visit) {
        var words = words(visit);
        var use = use();
        var people = buyers.all();
        var nameless = use.keySet().stream()
                .filter(number -> people.stream().noneMatch(b -> b.number().equals(number)))
                .map(number -> new PeoplePage.Nameless(
                        number.text(),
                        words.say("use", use.getOrDefault(number, 0)),
                        PATH + "/new?number=" + encoded(number)))
                .toList();
        var done = visit.asked().text("done");
        return Answer.page(
                "people/list.jte",
                new PeoplePage(
                        words.knows("done." + done)
                                ? Optional.of(NoticeShown.kept(words.say("done." + done)))
                                : Optional.empty(),
                        people.stream().map(b -> person(b, use, words)).toList(),
                        nameless));
    }

    private static PeoplePage.Person person(Buyer buyer, SortedMap<BuyerNumber, Integer> use, Words words) {
        var path = PATH + "/" + encoded(buyer.number());
        return new PeoplePage.Person(
                buyer.number().text(),
                buyer.name(),
                String.join(
                        "; ",
                        List.of(buyer.address(), buyer.note()).stream()
                                .filter(t -> !t.isEmpty())
                                .toList()),
                words.say("use", use.getOrDefault(buyer.number(), 0)),
                path + "/change",
                path + "/erase");
    }

    private SortedMap<BuyerNumber, Integer> use() {
        return BuyerUse.of(book.ask(Ledger::inOrder));
    }

    private static String encoded(BuyerNumber number) {
        return URLEncoder.encode(number.text(), StandardCharsets.UTF_8).replace("+", "%20");
    }

    private interface OfOne {
        Answer answer(Buyer buyer);
    }

    private Answer one(Visit visit, OfOne route) {
        try {
            return buyers.find(new BuyerNumber(visit.at("buyer")))
                    .map(route::answer)
                    .orElseGet(() -> Answer.notThere(visit.at("buyer")));
        } catch (OutOfRange notANumber) {
            return Answer.notThere(visit.at("buyer"));
        }
    }

    private Answer openNew(Visit visit) {
        var asked = visit.asked().text("number");
        var number = asked.isEmpty() ? freshNumber().text() : asked;
        return page(200, visit, "new.title", "new.intro", forms.blank(number, words(visit)));
    }

    /** Of the last part of a fresh id, which nobody can guess; not yet in the book, nor given to anybody. */
    private BuyerNumber freshNumber() {
        var use = use();
        while (true) {
            var id = book.freshId().toString();
            var number = new BuyerNumber("b-" + id.substring(id.length() - 5));
            if (!use.containsKey(number) && buyers.find(number).isEmpty()) {
                return number;
            }
        }
    }

    private Answer keepNew(Visit visit) {
        var words = words(visit);
        var form = forms.blank("", words).filledFrom(visit.typed());
        var read = forms.read(visit.typed(), words);
        if (read instanceof PersonForms.Read.Right(var buyer)
                && buyers.find(buyer.number()).isPresent()) {
            read = new PersonForms.Read.Wrong(List.of(new Form.ToMend(
                    PersonForms.NUMBER, words.say("number.taken", buyer.number().text()))));
        }
        return keep(visit, read, form, "new.title", "new.intro", "added");
    }

    private Answer open(Visit visit, Buyer buyer) {
        return page(200, visit, "change.title", "change.intro", forms.of(buyer, changePath(buyer), words(visit)));
    }

    private static String changePath(Buyer buyer) {
        return PATH + "/" + encoded(buyer.number()) + "/change";
    }

    private Answer change(Visit visit, Buyer buyer) {
        var words = words(visit);
        var form = forms.of(buyer, changePath(buyer), words).filledFrom(visit.typed());
        return keep(
                visit,
                forms.read(visit.typed(), buyer.number(), words),
                form,
                "change.title",
                "change.intro",
                "changed");
    }

    private Answer keep(Visit visit, PersonForms.Read read, Form form, String titleKey, String introKey, String done) {
        if (Form.isToBeShownAgain(visit.typed())) {
            var found = read instanceof PersonForms.Read.Wrong(var toMend) ? toMend : List.<Form.ToMend>of();
            var again = form.shownAgain(visit.typed(), found, words(visit).say("notSaved.still"));
            return page(200, visit, titleKey, introKey, again);
        }
        return switch (read) {
            case PersonForms.Read.Wrong(var toMend) -> page(422, visit, titleKey, introKey, form.toMend(toMend));
            case PersonForms.Read.Right(var buyer) -> answer(visit, buyers.keep(buyer), form, titleKey, introKey, done);
        };
    }

    private Answer answer(Visit visit, Change change, Form form, String titleKey, String introKey, String done) {
        return switch (change) {
            case Change.Done() -> Answer.onward(PATH + "?done=" + done);
            case Change.WasNotThere() -> Answer.onward(PATH);
            case Change.NotSaved(var reason) ->
                page(
                        503,
                        visit,
                        titleKey,
                        introKey,
                        form.toMend(List.of(new Form.ToMend("", words(visit).say("notSaved", reason)))));
        };
    }

    private Answer openErasing(Visit visit, Buyer buyer) {
        return page(200, visit, "erase.title", "erase.intro", erasing(visit, buyer), buyer.name());
    }

    private Form erasing(Visit visit, Buyer buyer) {
        return Form.of(
                PATH + "/" + encoded(buyer.number()) + "/erase",
                "",
                words(visit).say("erase.keep"));
    }

    private Answer erase(Visit visit, Buyer buyer) {
        if (Form.isToBeShownAgain(visit.typed())) {
            return openErasing(visit, buyer);
        }
        return answer(
                visit, buyers.erase(buyer.number()), erasing(visit, buyer), "erase.title", "erase.again", "erased");
    }

    private static Answer page(
            int status, Visit visit, String titleKey, String introKey, Form form, Object... arguments) {
        var words = words(visit);
        return new Answer.Page(
                status, "people/page.jte", new PersonPage(words.say(titleKey), words.say(introKey, arguments), form));
    }
}
