package eggwright.desk.lamp;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import eggwright.book.entry.EggsSet;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.HabitsNoted;
import eggwright.book.entry.LoadSet;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Lot;
import eggwright.book.entry.PlaceSeen;
import eggwright.book.entry.Scope;
import eggwright.book.entry.SecondLookAsked;
import eggwright.book.name.MachineName;
import eggwright.book.name.PenName;
import eggwright.book.name.PersonName;
import eggwright.book.name.SectionName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.desk.browser.BrowserStation;
import eggwright.desk.lamp.LampFarm.More;
import eggwright.trade.Species;
import java.time.Duration;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Every state in which the lamp page can be seen, one after the other. */
final class LampStates {
    static final String WITHOUT_SCRIPT = "no-script";

    static final List<String> NAMES = List.of(
            "setup",
            "setup-button",
            "round",
            "what-it-looks-like",
            "tray",
            "tray-touched",
            "after",
            "two-keys",
            "left-hand",
            "begun",
            "offline-start",
            "mixed",
            "mixed-touched",
            "mixed-after",
            "places",
            "places-marked",
            "second-blind",
            "second-blind-touched",
            "second-not-yours",
            "second-round",
            "refused",
            "refused-saved",
            "clock",
            "others",
            "others-tray",
            "late",
            "too-early",
            "not-joined",
            "other-farm",
            "desk-full",
            "card-of-no-load",
            "other-tab",
            "no-room",
            "not-started",
            WITHOUT_SCRIPT,
            "all-done",
            "nothing-due");

    static final SetName MIXED = new SetName("Mix");
    private static final Duration WEEK = Duration.ofDays(7);

    private final BiConsumer<String, Page> look;

    private LampStates(BiConsumer<String, Page> look) {
        this.look = look;
    }

    static void show(BiConsumer<String, Page> look) {
        var states = new LampStates(look);
        states.usualRound();
        states.mixedTray();
        states.secondLook();
        states.troubles();
        states.starts();
        states.ends();
    }

    private void usualRound() {
        onPhone(LampFarm.open(), (farm, phone, context) -> {
            var page = context.newPage();
            page.navigate(farm.address().resolve("/lamp").toString());
            page.waitForSelector(".other .field input");
            look.accept("setup", page);
            page.locator(".buttons button").first().click();
            look.accept("setup-button", page);
            page.close();
            page = phone.open("Wren");
            look.accept("round", page);
            phone.touch(".view.round [data-key=help]");
            look.accept("what-it-looks-like", page);
            page.locator(".other .away").tap();
            page.waitForSelector(".next");
            phone.touch(".next [data-key^=take]");
            look.accept("tray", page);
            touch(phone, "clear", "clear", "clear", "dead");
            look.accept("tray-touched", page);
            phone.key("done");
            look.accept("after", page);
            setUp(phone, "form", "two");
            phone.touch(".next [data-key^=take]");
            touch(phone, "good", "out");
            look.accept("two-keys", page);
            phone.touch(".view.tray [data-key=away]");
            page.waitForSelector(".next");
            setUp(phone, "form", "six");
            setUp(phone, "hand", "left");
            phone.touch(".next [data-key^=take]");
            touch(phone, "rot");
            look.accept("left-hand", page);
            phone.touch(".view.tray [data-key=away]");
            phone.outOfReach();
            page.waitForSelector(".next");
            look.accept("begun", page);
            phone.waitUntilKept();
            phone.kill();
            page = phone.open("Wren");
            phone.touch(".view.tray [data-key=away]");
            page.waitForFunction("() => document.querySelector('.desk')?.textContent.includes('out of reach')");
            look.accept("offline-start", page);
        });
    }

    private void mixedTray() {
        onPhone(LampFarm.open(rows(), mixed(1, marked()), mixed(2, placed()), doubtful(2)), (farm, phone, context) -> {
            var page = phone.open("Wren");
            take(phone, 1);
            look.accept("mixed", page);
            phone.touch(".view.tray [data-key='pen:0']");
            touch(phone, "clear");
            phone.touch(".view.tray [data-key='pen:0']");
            touch(phone, "dead");
            look.accept("mixed-touched", page);
            phone.key("done");
            look.accept("mixed-after", page);
            setUp(phone, "places", "on");
            take(phone, 2);
            look.accept("places", page);
            phone.touch(".view.tray [data-key='place:4']");
            touch(phone, "clear");
            phone.touch(".view.tray [data-key='place:40']");
            look.accept("places-marked", page);
        });
    }

    private void secondLook() {
        onPhone(
                LampFarm.open(rows(), mixed(1, plain()), mixed(2, plain()), seen(1), seen(2), asked(null, 1, 2)),
                (farm, phone, context) -> {
                    var page = phone.open("Linnet");
                    take(phone, 1);
                    look.accept("second-blind", page);
                    touch(phone, "doubtful");
                    look.accept("second-blind-touched", page);
                    phone.key("done");
                    phone.touch(".view.round [data-key=setup]");
                    page.locator(".field input").fill("Wren");
                    page.locator(".field input").blur();
                    page.locator(".other .away").tap();
                    page.waitForSelector(".next, .nothing");
                    take(phone, 2);
                    look.accept("second-not-yours", page);
                    phone.touch(".view.tray [data-key=away]");
                    page.waitForSelector(".view.round:not([hidden])");
                    phone.unfold();
                    look.accept("second-round", page);
                });
    }

    private void troubles() {
        onPhone(LampFarm.open(), (farm, phone, context) -> {
            context.route("**/api/lamp/entries", LampStates::refuse);
            var page = phone.open("Wren");
            phone.touch(".next [data-key^=take]");
            touch(phone, "clear");
            phone.key("done");
            page.waitForSelector(".refused");
            look.accept("refused", page);
            phone.touch(".refused [data-key=save]");
            page.waitForSelector(".refused [data-key^=letGo]");
            look.accept("refused-saved", page);
        });
        round("clock", told -> told.replaceAll("\"now\":\"2", "\"now\":\"3"), page -> page.waitForSelector(".note"));
        onPhone(LampFarm.open(), (farm, phone, context) -> {
            var page = phone.open("Wren");
            var set = page.locator(".next .where").innerText().replaceAll("set (\\S+) .*", "$1");
            var trays = page.locator("section .trays b").allTextContents();
            said(
                    context,
                    page,
                    "**/api/lamp/round",
                    route -> changed(
                            route,
                            told -> told.replaceFirst(
                                    "\"others\":\\[]",
                                    "\"others\":[" + held(set, trays.get(0), "has") + ","
                                            + held(set, trays.get(1), "did") + "]")),
                    "Linnet has it");
            look.accept("others", page);
            page.locator(".trays li:has-text('Linnet has it') .tray").tap();
            page.waitForSelector(".view.tray:not([hidden])");
            look.accept("others-tray", page);
        });
        round("late", told -> told.replaceAll("\"minutes\":\\d+", "\"minutes\":0"), page -> {
            page.locator(".next [data-key^=take]").tap();
            page.waitForSelector(".outFor.late");
        });
        round("too-early", told -> told.replaceAll("\"from\":\\d+", "\"from\":20"), page -> {
            page.locator(".next [data-key^=take]").tap();
            page.waitForSelector(".view.tray .note");
        });
        onPhone(LampFarm.open(), (farm, phone, context) -> {
            var page = phone.open("Wren");
            said(context, page, "**/api/lamp/round", answer(401, "{}"), "join again");
            look.accept("not-joined", page);
            said(
                    context,
                    page,
                    "**/api/lamp/round",
                    route -> changed(route, told -> told.replaceFirst("\"farm\":\"[^\"]*\"", "\"farm\":\"Elsewhere\"")),
                    "another farm");
            look.accept("other-farm", page);
            context.unroute("**/api/lamp/round");
            context.route(
                    "**/api/lamp/entries",
                    answer(200, "{\"answers\":[{\"became\":\"not_now\",\"reason\":\"disk full\"}]}"));
            phone.touch(".next [data-key^=take]");
            phone.key("done");
            page.waitForFunction("() => document.querySelector('.desk').textContent.includes('could not write')");
            look.accept("desk-full", page);
            page.evaluate("() => { location.hash = '#27-1/999'; }");
            page.waitForSelector(".round .note");
            look.accept("card-of-no-load", page);
        });
    }

    private void starts() {
        onPhone(LampFarm.open(), (farm, phone, context) -> {
            phone.open("Wren");
            var other = context.newPage();
            other.navigate(farm.address().resolve("/lamp").toString());
            other.waitForSelector("#lamp [role=alert]");
            look.accept("other-tab", other);
            other.close();
            phone.touch(".next [data-key^=take]");
            phone.page().evaluate("""
                    () => { IDBObjectStore.prototype.add = () => { throw new DOMException('The quota is reached', 'QuotaExceededError'); }; }
                    """);
            phone.touch(".view.tray [data-key=clear]");
            phone.page().waitForSelector("#lamp [role=alert]");
            look.accept("no-room", phone.page());
            phone.kill();
            var broken = context.newPage();
            broken.addInitScript(
                    "IDBFactory.prototype.open = () => { throw new DOMException('Not in a private tab'); };");
            broken.navigate(farm.address().resolve("/lamp").toString());
            broken.waitForSelector("#lamp [role=alert]");
            look.accept("not-started", broken);
            broken.close();
        });
        BrowserStation.withPhone(options -> options.setJavaScriptEnabled(false), context -> {
            try (var farm = LampFarm.open()) {
                var page = context.newPage();
                page.navigate(farm.address().resolve("/lamp").toString());
                look.accept(WITHOUT_SCRIPT, page);
            }
        });
    }

    private void ends() {
        onPhone(LampFarm.open(), (farm, phone, context) -> {
            var page = phone.open("Wren");
            while (page.locator(".next").count() > 0) {
                phone.touch(".next [data-key^=take]");
                phone.key("done");
                phone.page().waitForSelector(".after");
            }
            look.accept("all-done", page);
        });
        onPhone(LampFarm.fresh(), (farm, phone, context) -> look.accept("nothing-due", phone.open("Wren")));
    }

    /** The round, with something else in what the desk told. */
    private void round(String name, UnaryOperator<String> told, Consumer<Page> until) {
        onPhone(LampFarm.open(), (farm, phone, context) -> {
            context.route("**/api/lamp/round", route -> changed(route, told));
            var page = phone.open("Wren");
            page.waitForSelector(".next");
            until.accept(page);
            look.accept(name, page);
        });
    }

    private static void changed(Route route, UnaryOperator<String> told) {
        var answer = route.fetch();
        route.fulfill(new Route.FulfillOptions().setResponse(answer).setBody(told.apply(answer.text())));
    }

    private static Consumer<Route> answer(int status, String json) {
        return route -> route.fulfill(new Route.FulfillOptions()
                .setStatus(status)
                .setContentType("application/json")
                .setBody(json));
    }

    private static void refuse(Route route) {
        answer(
                        200,
                        "{\"answers\":[{\"became\":\"refused\",\"reason\":\"The book has another note under the same name."
                                + " Nothing was overwritten.\"}]}")
                .accept(route);
    }

    private static void said(BrowserContext context, Page page, String route, Consumer<Route> answer, String words) {
        context.unroute(route);
        context.route(route, answer);
        page.waitForFunction("""
                words => {
                  dispatchEvent(new Event('online'));
                  return document.querySelector('.round').textContent.includes(words);
                }
                """, words, new Page.WaitForFunctionOptions().setPollingInterval(300));
    }

    private static String held(String set, String tray, String state) {
        return "{\"set\":\"" + set + "\",\"tray\":\"" + tray + "\",\"who\":\"Linnet\",\"state\":\"" + state + "\"}";
    }

    // What is in the book besides the invented season.

    static More rows() {
        var rows = IntStream.range(0, 9).mapToObj(i -> 6).toList();
        return new More(
                WEEK.plusDays(3),
                "Wren",
                "desk",
                new HabitsNoted(null, null, null, null, null, null, null, rows, null, null, null));
    }

    static More mixed(int tray, List<Lot> lots) {
        return new More(
                WEEK,
                "Wren",
                "desk",
                new EggsSet(
                        MIXED,
                        List.of(new LoadSet(tray(tray), new MachineName("Setter"), new SectionName("1"), null, lots))));
    }

    static List<Lot> plain() {
        return List.of(Lot.of(new PenName("Willow"), Species.CHICKEN, null, null, 54));
    }

    static List<Lot> marked() {
        return List.of(
                lot("Willow", 20, "blue dot", List.of()),
                lot("Alder", 20, "cross", List.of()),
                lot("Oak", 14, null, List.of()));
    }

    static List<Lot> placed() {
        return List.of(
                lot("Willow", 30, null, IntStream.rangeClosed(1, 30).boxed().toList()),
                lot("Alder", 24, null, IntStream.rangeClosed(31, 54).boxed().toList()));
    }

    private static Lot lot(String pen, int eggs, @Nullable String mark, List<Integer> places) {
        return new Lot(new PenName(pen), Species.CHICKEN, null, null, eggs, mark, places);
    }

    static More doubtful(int tray) {
        return new More(
                Duration.ofDays(1),
                "Wren",
                "desk",
                new Looked(
                        Scope.ofLoad(MIXED, tray(tray)),
                        null,
                        null,
                        List.of(FindingCount.left(Finding.DOUBTFUL, 2)),
                        0,
                        null,
                        List.of(new PlaceSeen(7, Finding.DOUBTFUL), new PlaceSeen(33, Finding.DOUBTFUL)),
                        null));
    }

    /** A usual look by Wren, in which nothing was found. */
    static More seen(int tray) {
        return new More(
                Duration.ofHours(30),
                "Wren",
                "Wren’s phone",
                new Looked(Scope.ofLoad(MIXED, tray(tray)), null, null, List.of(), 0, null));
    }

    static More asked(@Nullable String of, int... trays) {
        return new More(
                Duration.ofHours(20),
                "Wren",
                "desk",
                new SecondLookAsked(
                        MIXED,
                        IntStream.of(trays).mapToObj(LampStates::tray).toList(),
                        of == null ? null : new PersonName(of)));
    }

    static TrayName tray(int number) {
        return new TrayName(Integer.toString(number));
    }

    /** Takes a tray of the mixed set, wherever it stands in the list. */
    static void take(Phone phone, int tray) {
        var page = phone.page();
        page.evaluate("tray => { location.hash = '#Mix/' + tray; }", tray);
        page.waitForSelector(".view.tray:not([hidden])");
    }

    private static void touch(Phone phone, String... keys) {
        for (var key : keys) {
            phone.key(key);
        }
    }

    static void setUp(Phone phone, String choice, String value) {
        phone.touch(".view.round [data-key=setup]");
        phone.page().locator("input[name=" + choice + "][value=" + value + "]").check();
        phone.page().locator(".other .away").tap();
        phone.page().waitForSelector(".next, .nothing");
    }

    private static void onPhone(LampFarm farm, Held held) {
        try (farm) {
            BrowserStation.withPhone(context -> held.hold(farm, new Phone(context, farm.address()), context));
        }
    }

    /** A farm, a phone, and what the phone keeps. */
    private interface Held {
        void hold(LampFarm farm, Phone phone, BrowserContext context);
    }
}
