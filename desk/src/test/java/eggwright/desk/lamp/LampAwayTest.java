package eggwright.desk.lamp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Looked;
import eggwright.book.fold.Ledger;
import eggwright.desk.browser.BrowserStation;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A phone that is away from the desk for days, and one whose page does not live from one touch to the next. */
final class LampAwayTest {
    private static final Duration TWO_DAYS = Duration.ofDays(2);

    /** The phone's clock, set forward by as much as the test says. */
    private static final String CLOCK = """
            {
              const Now = Date;
              const later = () => Number(localStorage.getItem('later') ?? 0);
              Date = class extends Now {
                constructor(...of) { if (of.length === 0) super(Now.now() + later()); else super(...of); }
                static now() { return Now.now() + later(); }
              };
            }
            """;

    @Test
    void phone_withoutSignalForTwoDays_agesItsTrays_andBringsBothDays() {
        try (var farm = LampFarm.open()) {
            BrowserStation.withPhone(context -> {
                context.addInitScript(CLOCK);
                var phone = new Phone(context, farm.address());
                var page = phone.open("Linnet");
                phone.waitUntilKept();
                phone.outOfReach();
                int day = day(page.locator(".next .where").textContent());
                phone.touch(".next [data-key^=take]");
                phone.key("clear");
                phone.key("done");
                page.evaluate("later => localStorage.setItem('later', later)", String.valueOf(TWO_DAYS.toMillis()));
                farm.passes(TWO_DAYS);
                phone.kill();

                page = phone.open("Linnet");
                assertTrue(page.locator(".desk").textContent().contains("1 note is only on this phone"));
                assertEquals(day + 2, day(page.locator(".next .where").textContent()));
                phone.touch(".next [data-key^=take]");
                phone.key("dead");
                phone.key("done");
                phone.inReach();
                phone.waitUntilSent();
                assertEquals(0, page.locator(".note:has-text('clock')").count());
            });
            var brought = farm.kept().stream()
                    .filter(k -> k.entry().who().text().equals("Linnet")
                            && !k.received().isBefore(inTwoDays()))
                    .sorted(Comparator.comparing(k -> k.entry().happened()))
                    .toList();
            assertEquals(
                    List.of(Finding.CLEAR, Finding.DEAD),
                    brought.stream().map(LampAwayTest::seen).toList());
            for (var kept : brought) {
                assertEquals(Duration.ZERO, kept.clockOffset(), "its clock is right");
            }
            var between = Duration.between(
                    brought.getFirst().entry().happened(),
                    brought.getLast().entry().happened());
            assertTrue(between.compareTo(TWO_DAYS) >= 0, between.toString());
        }
    }

    /** At the edge of reach: the question goes out, and no answer comes. */
    @Test
    void phone_whoseQuestionIsNeverAnswered_givesUp_andTriesAgain() {
        try (var farm = LampFarm.open()) {
            BrowserStation.withPhone(context -> {
                var phone = new Phone(context, farm.address());
                var page = phone.open("Linnet");
                context.route("**/api/lamp/round", route -> {});
                phone.touch(".next [data-key^=take]");
                phone.key("clear");
                phone.key("done");
                page.waitForFunction("() => document.querySelector('.desk').textContent.includes('out of reach')");
                context.unroute("**/api/lamp/round");
                phone.touch(".view.round [data-key=send]");
                phone.waitUntilSent();
                assertEquals(
                        1,
                        farm.kept().stream()
                                .filter(k -> k.entry().who().text().equals("Linnet")
                                        && k.received().isAfter(Instant.now().minusSeconds(120)))
                                .count());
            });
        }
    }

    private static Instant inTwoDays() {
        return Instant.now().plus(TWO_DAYS).minus(Duration.ofMinutes(5));
    }

    private static Finding seen(Kept kept) {
        return ((Looked) kept.entry().payload()).findings().getFirst().finding();
    }

    private static int day(String where) {
        return Integer.parseInt(where.replaceAll(".* day (\\d+).*", "$1"));
    }

    /** Taken, touched, undone, counted otherwise, done: after each of them the page is gone, and nothing else is. */
    @Test
    void page_killedBetweenAnyTwoTouches_losesNone() {
        try (var farm = LampFarm.open()) {
            BrowserStation.withPhone(context -> {
                var phone = new Phone(context, farm.address());
                phone.open("Linnet");
                phone.waitUntilKept();
                phone.outOfReach();
                phone.touch(".next [data-key^=take]");
                for (var key : List.of("fewer", "clear", "rot", "undo", "dead", "open", "clear", "doubtful")) {
                    phone.key(key);
                    phone.settle();
                    phone.kill();
                    phone.open("Linnet");
                    assertTrue(phone.inTray(), "the tray that was in the hand is open after " + key);
                }
                phone.key("done");
                phone.kill();
                phone.open("Linnet");
                phone.inReach();
                phone.waitUntilSent();
            });
            var looks = Ledger.of(farm.kept()).inOrder().stream()
                    .filter(farm::isOfNow)
                    .map(e -> (Looked) e.payload())
                    .toList();
            assertEquals(1, looks.size());
            assertEquals(
                    List.of(
                            FindingCount.removed(Finding.CLEAR, 2),
                            new FindingCount(Finding.DEAD, 1, 0, 1),
                            FindingCount.left(Finding.DOUBTFUL, 1)),
                    looks.getFirst().findings());
            assertTrue(looks.getFirst().countedBefore() != null, "that one fewer was counted is kept too");
        }
    }
}
