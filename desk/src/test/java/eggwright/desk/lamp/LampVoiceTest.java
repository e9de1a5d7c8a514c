package eggwright.desk.lamp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import eggwright.desk.browser.BrowserStation;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What is heard, felt and kept lit. The browser's own ways to do so are replaced by ones that write down what is asked of
 * them: no machine that tests has ears.
 */
final class LampVoiceTest {
    private static final List<String> FINDINGS =
            List.of("clear", "blood_ring", "dead", "doubtful", "cracked", "rot", "wrong_end_up");

    private static final String STUBS = """
            window.asked = { shakes: [], tones: [], words: [], awake: [], let: 0 };
            Navigator.prototype.vibrate = function (pattern) { asked.shakes.push([pattern].flat().join(' ')); return true; };
            window.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };
            Object.defineProperty(window, 'speechSynthesis', { value: {
              cancel() {}, speak(said) { asked.words.push(said.lang + ': ' + said.text); },
            } });
            class Part { connect(next) { return next; } }
            window.AudioContext = class {
              state = 'running'; currentTime = 0; destination = new Part();
              resume() {}
              createGain() { return Object.assign(new Part(), { gain: { setValueAtTime() {}, exponentialRampToValueAtTime() {} } }); }
              createOscillator() {
                const tone = Object.assign(new Part(), { frequency: {}, start() {}, stop(at) { asked.tones.push(tone.frequency.value + ' Hz ' + at + ' s'); } });
                return tone;
              }
            };
            window.hidden = false;
            Object.defineProperty(Document.prototype, 'visibilityState', { get: () => (window.hidden ? 'hidden' : 'visible') });
            Object.defineProperty(Navigator.prototype, 'wakeLock', { value: { request: async what => {
              asked.awake.push(what + ' ' + document.visibilityState);
              const lock = new EventTarget();
              lock.release = async () => { asked.let += 1; lock.dispatchEvent(new Event('release')); };
              window.lock = lock;
              return lock;
            } } });
            """;

    @Test
    void findings_areToldApartByEarAndHand() {
        onPhone((phone, page) -> {
            phone.touch(".next [data-key^=take]");
            forget(page);
            FINDINGS.forEach(phone::key);
            phone.key("undo");
            assertEquals(
                    8,
                    new HashSet<>(asked(page, "tones")).size(),
                    asked(page, "tones").toString());
            assertEquals(
                    8,
                    new HashSet<>(asked(page, "shakes")).size(),
                    asked(page, "shakes").toString());
            assertEquals(8, asked(page, "tones").size());
            assertEquals(List.of(), asked(page, "words"), "the voice is silent until it is asked for");
        });
    }

    @Test
    void voice_saysTheTray_eachFindingWithItsCount_andWhatItAddsUpTo() {
        onPhone((phone, page) -> {
            LampStates.setUp(phone, "speak", "on");
            var tray = phone.tray();
            phone.touch(".next [data-key^=take]");
            phone.key("clear");
            phone.key("clear");
            phone.key("blood_ring");
            phone.key("undo");
            phone.key("done");
            assertEquals(
                    List.of(
                            "en: tray " + tray,
                            "en: clear, 1",
                            "en: clear, 2",
                            "en: blood ring, 1",
                            "en: undone",
                            "en: tray " + tray + " done, 2 faulty"),
                    asked(page, "words"));
        });
    }

    @Test
    void whoWantsNeitherTickNorShake_hasNone() {
        onPhone((phone, page) -> {
            LampStates.setUp(phone, "tick", "off");
            LampStates.setUp(phone, "shake", "off");
            phone.touch(".next [data-key^=take]");
            phone.key("clear");
            assertEquals(List.of(), asked(page, "tones"));
            assertEquals(List.of(), asked(page, "shakes"));
        });
    }

    @Test
    void screen_isKeptAwakeWhileATrayIsOpen_alsoAfterThePageWasAway() {
        onPhone((phone, page) -> {
            assertEquals(List.of(), asked(page, "awake"), "not before a tray is open");
            phone.touch(".next [data-key^=take]");
            assertEquals(List.of("screen visible"), asked(page, "awake"));
            // The phone takes its lock back when the page goes out of sight.
            page.evaluate(
                    "() => { hidden = true; lock.dispatchEvent(new Event('release')); document.dispatchEvent(new Event('visibilitychange')); }");
            assertEquals(1, asked(page, "awake").size());
            page.evaluate("() => { hidden = false; document.dispatchEvent(new Event('visibilitychange')); }");
            assertEquals(List.of("screen visible", "screen visible"), asked(page, "awake"));
            phone.key("done");
            assertEquals(1, page.evaluate("() => asked.let"), "let go with the tray");
            page.evaluate("() => document.dispatchEvent(new Event('visibilitychange'))");
            assertEquals(2, asked(page, "awake").size(), "not in the list of trays");
        });
    }

    /** A phone that refuses all four counts as well as any. */
    @Test
    void phoneWithoutVoiceShakeTickAndLock_countsAllTheSame() {
        BrowserStation.withPhone(context -> {
            try (var farm = LampFarm.open()) {
                context.addInitScript("""
                        delete Navigator.prototype.vibrate;
                        delete window.AudioContext;
                        delete window.speechSynthesis;
                        Object.defineProperty(Navigator.prototype, 'wakeLock', { value: { request: async () => { throw new DOMException('No'); } } });
                        """);
                var phone = new Phone(context, farm.address());
                var page = phone.open("Wren");
                phone.touch(".next [data-key^=take]");
                phone.key("clear");
                assertTrue(page.locator(".sum").textContent().contains("1 faulty"));
                phone.key("done");
                phone.waitUntilSent();
            }
        });
    }

    /** At the farm's limit a quiet tick, once. */
    @Test
    void limitOfTimeOut_isTickedOnce() {
        onPhone((phone, page) -> {
            page.context().route("**/api/lamp/round", route -> {
                var answer = route.fetch();
                route.fulfill(new com.microsoft.playwright.Route.FulfillOptions()
                        .setResponse(answer)
                        .setBody(answer.text().replaceAll("\"minutes\":\\d+", "\"minutes\":0")));
            });
            page.evaluate("() => dispatchEvent(new Event('online'))");
            page.waitForTimeout(500);
            forget(page);
            phone.touch(".next [data-key^=take]");
            phone.key("clear");
            var low = asked(page, "tones").stream()
                    .filter(t -> t.startsWith("180 Hz"))
                    .count();
            assertEquals(1, low, asked(page, "tones").toString());
        });
    }

    private static void forget(Page page) {
        page.evaluate("() => { asked.tones = []; asked.shakes = []; asked.words = []; }");
    }

    @SuppressWarnings("unchecked")
    private static List<String> asked(Page page, String what) {
        return (List<String>) page.evaluate("what => asked[what]", what);
    }

    private static void onPhone(Held held) {
        try (var farm = LampFarm.open()) {
            BrowserStation.withPhone((BrowserContext context) -> {
                context.addInitScript(STUBS);
                var phone = new Phone(context, farm.address());
                held.hold(phone, phone.open("Wren"));
            });
        }
    }

    /** A phone, and its page. */
    private interface Held {
        void hold(Phone phone, Page page);
    }
}
