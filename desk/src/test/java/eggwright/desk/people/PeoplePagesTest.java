package eggwright.desk.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.ChicksOrdered;
import eggwright.book.name.BuyerNumber;
import eggwright.book.name.DeviceName;
import eggwright.book.name.FarmId;
import eggwright.book.name.OrderNumber;
import eggwright.book.name.PersonName;
import eggwright.book.store.Buyer;
import eggwright.book.store.BuyerStore;
import eggwright.desk.Answer;
import eggwright.desk.Bringing;
import eggwright.desk.Hearing;
import eggwright.desk.Look;
import eggwright.desk.Route;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.assets.Assets;
import eggwright.desk.form.Typed;
import eggwright.desk.live.LiveBook;
import eggwright.desk.who.May;
import eggwright.desk.who.Visitor;
import eggwright.testkit.contracts.MemoryBuyerStore;
import eggwright.testkit.contracts.MemoryEntryStore;
import eggwright.trade.Species;
import eggwright.wire.EntryCodec;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PeoplePagesTest {
    private static final Instant NOON = Instant.parse("2027-05-12T17:00:00Z");
    private static final BuyerNumber NUMBER = new BuyerNumber("b-4821");

    private final BuyerStore buyers = new MemoryBuyerStore();
    private final LiveBook book = new LiveBook(
            new MemoryEntryStore(new FarmId("Fallow End")),
            EntryCodec::write,
            EntryCodec::version,
            InstantSource.fixed(NOON),
            new SplittableRandom(7));
    private final Map<String, Route> reads = new HashMap<>();
    private final Map<String, Route> writes = new HashMap<>();

    PeoplePagesTest() {
        open(buyers);
    }

    private void open(BuyerStore store) {
        new PeoplePages(book, store).addTo(new Routes() {
            @Override
            public void read(String path, May may, Route route) {
                assertEquals(May.RUN, may, path);
                reads.put(path, route);
            }

            @Override
            public void write(String path, May may, Route route) {
                assertEquals(May.RUN, may, path);
                writes.put(path, route);
            }

            @Override
            public void tell(String path, May may, Route route) {
                throw new AssertionError("No script asks for people");
            }

            @Override
            public void take(String path, May may, Route route) {
                throw new AssertionError("No script sends people");
            }

            @Override
            public void hear(String path, May may, Hearing hearing) {
                throw new AssertionError("No sensor tells of people");
            }

            @Override
            public void bring(String path, May may, Bringing bringing) {
                throw new AssertionError("No file holds people");
            }

            @Override
            public Assets assets() {
                return new Assets();
            }
        });
    }

    private static Answer go(Map<String, Route> routes, String path, String number, Map<String, String> typed) {
        var route = routes.get(path);
        assertTrue(route != null, path);
        return route.answer(new Visit(
                new Visitor.ThisMachine(),
                path,
                Map.of("buyer", number),
                Typed.nothing(),
                Typed.of(typed),
                "",
                Look.SYSTEM,
                Locale.ENGLISH,
                "127.0.0.1"));
    }

    private PeoplePage list() {
        return (PeoplePage) assertInstanceOf(Answer.Page.class, go(reads, "/settings/people", "", Map.of()))
                .page();
    }

    @Test
    void buyer_isAdded_changed_andErased() {
        var added = go(
                writes,
                "/settings/people/new",
                "",
                Map.of("number", "b-4821", "name", "Ada Marsh", "address", "Mill Lane 3"));
        assertEquals(new Answer.Onward("/settings/people?done=added"), added);
        assertEquals(Optional.of(new Buyer(NUMBER, "Ada Marsh", "Mill Lane 3", "")), buyers.find(NUMBER));

        go(writes, "/settings/people/{buyer}/change", "b-4821", Map.of("name", "Ada Marsh", "address", "Mill Lane 5"));
        assertEquals("Mill Lane 5", list().people().getFirst().about());

        go(writes, "/settings/people/{buyer}/erase", "b-4821", Map.of());
        assertEquals(List.of(), buyers.all());
        assertEquals(Answer.notThere("b-4821"), go(reads, "/settings/people/{buyer}/change", "b-4821", Map.of()));
    }

    @Test
    void numberThatHasAName_isNotGivenTwice_andWhatWasTypedStays() {
        buyers.keep(new Buyer(NUMBER, "Ada Marsh", "", ""));
        var refused =
                (Answer.Page) go(writes, "/settings/people/new", "", Map.of("number", "b-4821", "name", "Tom Reed"));
        assertEquals(422, refused.status());
        var form = ((PersonPage) refused.page()).form();
        assertTrue(
                form.top().getFirst().message().contains("b-4821 has a name already"),
                form.top().toString());
        assertTrue(form.fields().toString().contains("Tom Reed"));
        assertEquals("Ada Marsh", buyers.find(NUMBER).orElseThrow().name());
    }

    @Test
    void erasedBuyer_leavesTheBareNumberInTheBook() {
        buyers.keep(new Buyer(NUMBER, "Ada Marsh", "", ""));
        book.note(
                book.freshId(),
                NOON.atOffset(ZoneOffset.UTC),
                new ChicksOrdered(new OrderNumber("12"), NUMBER, Species.PHEASANT, 50, LocalDate.of(2027, 6, 1), ""),
                new PersonName("Wren"),
                new DeviceName("desk"));
        assertEquals("in 1 note", list().people().getFirst().inTheBook());
        go(writes, "/settings/people/{buyer}/erase", "b-4821", Map.of());
        assertEquals(
                List.of(new PeoplePage.Nameless("b-4821", "in 1 note", "/settings/people/new?number=b-4821")),
                list().nameless());
        book.ask(ledger -> {
            ledger.inOrder().forEach(e -> assertFalse(e.toString().contains("Ada")));
            return 0;
        });
    }

    @Test
    void freshNumber_isOfNobody() {
        var form = ((PersonPage) ((Answer.Page) go(reads, "/settings/people/new", "", Map.of())).page()).form();
        var number = form.fields().getFirst().toString();
        assertTrue(number.matches(".*value=b-[0-9a-f]{5}.*"), number);
    }

    @Test
    void whatCannotBeSaved_staysOnThePage() {
        open(new BuyerStore() {
            @Override
            public List<Buyer> all() {
                return List.of();
            }

            @Override
            public Optional<Buyer> find(BuyerNumber number) {
                return Optional.empty();
            }

            @Override
            public Change keep(Buyer buyer) {
                return new Change.NotSaved("the disk is full");
            }

            @Override
            public Change erase(BuyerNumber number) {
                return new Change.NotSaved("the disk is full");
            }
        });
        var page = (Answer.Page)
                go(writes, "/settings/people/new", "", Map.of("number", "b-1", "name", "Tom Reed", "note", "0170"));
        assertEquals(503, page.status());
        var form = ((PersonPage) page.page()).form();
        assertTrue(
                form.top().getFirst().message().startsWith("Not saved: the disk is full."),
                form.top().toString());
        assertTrue(form.fields().toString().contains("Tom Reed")
                && form.fields().toString().contains("0170"));
    }
}
