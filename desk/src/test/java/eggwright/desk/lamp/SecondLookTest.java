package eggwright.desk.lamp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.LookSort;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Scope;
import eggwright.book.fold.Ledger;
import eggwright.desk.browser.BrowserStation;
import eggwright.desk.lamp.LampFarm.More;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A second, blind look: for whom it is, what it takes out (nothing), and when it is no longer wanted. */
final class SecondLookTest {
    private static final More SET = LampStates.mixed(1, LampStates.plain());
    private static final More FIRST = LampStates.seen(1);
    private static final More ASKED = LampStates.asked(null, 1);

    @Test
    void secondLook_takesNothingOut_andIsNoLongerWanted() {
        onPhone(LampFarm.open(SET, FIRST, ASKED), (farm, phone) -> {
            phone.open("Linnet");
            assertEquals("1", row(phone, "1").locator("b").textContent());
            assertTrue(row(phone, "1").textContent().contains("second look"));
            LampStates.take(phone, 1);
            phone.key("clear");
            phone.key("dead");
            // Buttons of a clicker, too, take nothing out.
            phone.page().keyboard().press("Digit6");
            phone.key("done");
            phone.waitUntilSent();

            var load = Ledger.of(farm.kept()).picture().set(LampStates.MIXED).orElseThrow();
            var tray = load.load(LampStates.tray(1)).orElseThrow();
            assertEquals(54, tray.eggsNow());
            assertEquals(
                    List.of(
                            FindingCount.left(Finding.CLEAR, 1),
                            FindingCount.left(Finding.DEAD, 1),
                            FindingCount.left(Finding.ROT, 1)),
                    tray.secondLooks().taken().getFirst().look().findings());
            assertEquals(Optional.empty(), wanted(farm));
        });
    }

    @Test
    void secondLook_isNotOfferedToWhoLookedFirst_andSaysSo() {
        onPhone(LampFarm.open(SET, FIRST, ASKED), (farm, phone) -> {
            phone.open("wren ");
            phone.unfold();
            assertTrue(row(phone, "1").textContent().contains("second look, by somebody else"));
            assertEquals(0, due(phone, "1"));
            LampStates.take(phone, 1);
            assertTrue(
                    middle(phone).contains("You looked first, wren: the second look is for another."), middle(phone));
            phone.key("clear");
            phone.key("done");
            phone.waitUntilSent();
            assertTrue(wanted(farm).isPresent());
        });
    }

    @Test
    void secondLook_askedOfOne_isOfferedToNobodyElse() {
        onPhone(LampFarm.open(SET, FIRST, LampStates.asked("Linnet", 1)), (farm, phone) -> {
            phone.open("Robin");
            assertEquals(0, due(phone, "1"));
            LampStates.take(phone, 1);
            assertTrue(middle(phone).contains("A second look is asked of Linnet."), middle(phone));
            phone.touch(".view.tray [data-key=away]");
            become(phone, "Linnet");
            assertEquals(1, due(phone, "1"));
        });
    }

    @Test
    void secondLook_askedOfWhoLookedFirst_isForNobody_andSaysSo() {
        onPhone(LampFarm.open(SET, FIRST, LampStates.asked("Wren", 1)), (farm, phone) -> {
            phone.open("Wren");
            LampStates.take(phone, 1);
            assertTrue(middle(phone).contains("asked of Wren, who looked first"), middle(phone));
        });
    }

    /** Before anybody has looked there is no second look; the first is taken without signal, and counts at once. */
    @Test
    void onePhone_servesBothLooks_oneAfterTheOther_withoutSignal() {
        onPhone(LampFarm.open(SET, ASKED), (farm, phone) -> {
            phone.open("Wren");
            phone.outOfReach();
            LampStates.take(phone, 1);
            assertTrue(middle(phone).contains("Yours is the first look."), middle(phone));
            phone.key("clear");
            phone.key("done");
            become(phone, "Linnet");
            LampStates.take(phone, 1);
            assertTrue(middle(phone).contains("The first look was noted on this phone, by Wren."), middle(phone));
            phone.key("doubtful");
            phone.key("done");
            phone.inReach();
            phone.waitUntilSent();

            var tray = Ledger.of(farm.kept())
                    .picture()
                    .set(LampStates.MIXED)
                    .flatMap(set -> set.load(LampStates.tray(1)))
                    .orElseThrow();
            assertEquals(1, tray.looks().size());
            assertEquals(1, tray.secondLooks().taken().size());
            assertEquals(53, tray.eggsNow());
            assertEquals(Optional.empty(), wanted(farm));
        });
    }

    @Test
    void blindLook_ofWhoLookedFirst_leavesItWanted() {
        try (var farm = LampFarm.open(SET, FIRST, ASKED, blind("WREN", Duration.ofHours(2)))) {
            assertEquals(
                    "Wren", wanted(farm).orElseThrow().first().getFirst().who().text());
            assertEquals(
                    "Wren’s phone",
                    wanted(farm).orElseThrow().first().getFirst().device().text());
        }
        try (var farm = LampFarm.open(SET, FIRST, LampStates.asked("Robin", 1), blind("Linnet", Duration.ofHours(2)))) {
            assertTrue(wanted(farm).isPresent(), "Linnet was not asked");
        }
    }

    @Test
    void blindLook_staysAnswered_whenItsOwnerLooksAgainLater() {
        var later = new More(Duration.ofHours(1), "Linnet", "Linnet’s phone", look(null));
        try (var farm = LampFarm.open(SET, FIRST, ASKED, blind("Linnet", Duration.ofHours(2)), later)) {
            assertEquals(Optional.empty(), wanted(farm));
        }
    }

    private static More blind(String who, Duration ago) {
        return new More(ago, who, who + "’s phone", look(LookSort.SECOND_BLIND));
    }

    private static Looked look(@Nullable LookSort sort) {
        return new Looked(
                Scope.ofLoad(LampStates.MIXED, LampStates.tray(1)), null, null, List.of(), 0, null, List.of(), sort);
    }

    private static Optional<SecondWanted> wanted(LampFarm farm) {
        var ledger = Ledger.of(farm.kept());
        return ledger.picture()
                .set(LampStates.MIXED)
                .flatMap(set -> set.load(LampStates.tray(1)))
                .flatMap(load -> SecondWanted.of(load, ledger));
    }

    private static com.microsoft.playwright.Locator row(Phone phone, String tray) {
        return phone.page()
                .locator("div:has(> h3:has-text('set Mix')) .tray")
                .filter(new com.microsoft.playwright.Locator.FilterOptions().setHasText(tray))
                .first();
    }

    /** How often the tray stands among those that are due. */
    private static int due(Phone phone, String tray) {
        return phone.page()
                .locator("section > div:has(> h3:has-text('set Mix')) .tray:has(b:text-is('" + tray + "'))")
                .count();
    }

    private static String middle(Phone phone) {
        return phone.page().locator(".view.tray .middle").innerText();
    }

    private static void become(Phone phone, String who) {
        var page = phone.page();
        page.waitForSelector(".view.round:not([hidden])");
        phone.touch(".view.round [data-key=setup]");
        page.locator(".field input").fill(who);
        page.locator(".field input").blur();
        page.locator(".other .away").tap();
        page.waitForSelector(".view.round:not([hidden])");
    }

    private static void onPhone(LampFarm farm, Held held) {
        try (farm) {
            BrowserStation.withPhone(context -> held.hold(farm, new Phone(context, farm.address())));
        }
    }

    /** A farm and a phone. */
    private interface Held {
        void hold(LampFarm farm, Phone phone);
    }
}
