package eggwright.desk.lamp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Finding;
import eggwright.book.entry.Looked;
import eggwright.book.fold.Ledger;
import eggwright.desk.browser.BrowserStation;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Fifty evenings at the lamp, dealt at random, with real touches in a real browser: trays taken, eggs touched, touches
 * undone, the signal cut, the page killed and opened again. What is in the book at the end is exactly what was touched.
 */
final class LampWalksTest {
    private static final int WALKS = 50;
    private static final long SEED = 20270413;

    private static final List<Finding> FINDINGS =
            List.of(Finding.CLEAR, Finding.BLOOD_RING, Finding.DEAD, Finding.DOUBTFUL, Finding.CRACKED, Finding.ROT);

    @Test
    void book_holdsExactlyWhatWasTouched_withRealFingers() {
        int kills = 0;
        int cuts = 0;
        try (var farm = LampFarm.open()) {
            for (int walk = 0; walk < WALKS; walk++) {
                var evening = new Evening(farm, "Walk " + walk, new Random(SEED + walk));
                BrowserStation.withPhone(evening::walk);
                kills += evening.kills;
                cuts += evening.cuts;
                assertEquals(evening.paper(), inTheBook(farm, "Walk " + walk), "walk " + walk + " of seed " + SEED);
            }
        }
        assertTrue(kills >= WALKS / 2, "hardly a page was killed: " + kills);
        assertTrue(cuts >= WALKS / 4, "hardly a signal was cut: " + cuts);
    }

    private static List<String> inTheBook(LampFarm farm, String who) {
        var found = new ArrayList<String>();
        for (var entry : Ledger.of(farm.kept()).inOrder()) {
            if (entry.entry().who().text().equals(who) && entry.payload() instanceof Looked look) {
                var counts = new EnumMap<Finding, Integer>(Finding.class);
                look.findings().forEach(f -> counts.put(f.finding(), f.seen()));
                found.add(words(String.valueOf(look.scope().tray()), counts));
            }
        }
        found.sort(null);
        return found;
    }

    private static String words(String tray, Map<Finding, Integer> counts) {
        return "tray " + tray + " " + counts;
    }

    /** One evening, and the paper that a person beside it keeps. */
    private static final class Evening {
        private static final int STEPS = 16;

        private final LampFarm farm;
        private final String who;
        private final Random random;
        private final Map<String, List<String>> done = new java.util.TreeMap<>();
        private final Deque<Finding> touched = new ArrayDeque<>();
        private String tray = "";
        int kills;
        int cuts;

        Evening(LampFarm farm, String who, Random random) {
            this.farm = farm;
            this.who = who;
            this.random = random;
        }

        void walk(com.microsoft.playwright.BrowserContext context) {
            var phone = new Phone(context, farm.address());
            phone.open(who);
            phone.waitUntilKept();
            for (int step = 0; step < STEPS; step++) {
                if (!phone.inTray()) {
                    takeAny(phone);
                } else {
                    touch(phone);
                }
                if (random.nextInt(12) == 0) {
                    phone.settle();
                    phone.kill();
                    kills++;
                    phone.open(who);
                    if (phone.inTray() && touched.isEmpty()) {
                        throw new AssertionError("A tray without a touch was taken for one that is in the hand");
                    }
                }
                if (random.nextInt(10) == 0) {
                    cuts++;
                    phone.outOfReach();
                } else if (random.nextInt(6) == 0) {
                    phone.inReach();
                }
            }
            if (phone.inTray()) {
                finish(phone);
            }
            phone.inReach();
            phone.waitUntilSent();
        }

        /** The tray that is offered, or the next of all. */
        private void takeAny(Phone phone) {
            var begun =
                    phone.page().locator(".trays li:has-text(\"begun\") .tray").first();
            if (begun.count() > 0 && !touched.isEmpty()) {
                phone.touch(".trays li:has-text(\"begun\") .tray");
            } else if (phone.page().locator(".next [data-key^=take]").count() > 0) {
                phone.touch(".next [data-key^=take]");
            } else {
                phone.unfold();
                phone.touch("details li:not(:has-text(\"done\")) .tray");
            }
            phone.page().waitForSelector(".view.tray:not([hidden])");
            tray = phone.tray();
        }

        private void touch(Phone phone) {
            int roll = random.nextInt(10);
            if (roll < 6) {
                var finding = FINDINGS.get(random.nextInt(FINDINGS.size()));
                phone.key(finding.word());
                touched.push(finding);
            } else if (roll < 8 && !touched.isEmpty()) {
                phone.key("undo");
                touched.pop();
            } else {
                finish(phone);
            }
        }

        private void finish(Phone phone) {
            phone.key("done");
            var counts = new EnumMap<Finding, Integer>(Finding.class);
            touched.forEach(f -> counts.merge(f, 1, Integer::sum));
            done.computeIfAbsent(tray, t -> new ArrayList<>()).add(words(tray, counts));
            touched.clear();
        }

        List<String> paper() {
            return done.values().stream().flatMap(List::stream).sorted().toList();
        }
    }
}
