package eggwright.desk.lamp;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import java.net.URI;
import org.jspecify.annotations.Nullable;

/** A phone with the lamp page, as a person holds it: it can be put away, killed, and taken out of reach. */
final class Phone {
    /** Longer than the bounce of a key. */
    private static final int BETWEEN_TOUCHES_MS = 130;

    private final BrowserContext context;
    private final URI lamp;
    private @Nullable Page page;
    private String lastKey = "";

    Phone(BrowserContext context, URI desk) {
        this.context = context;
        this.lamp = desk.resolve("/lamp");
    }

    /** Opens the page, and says who counts where the phone does not know yet. */
    Page open(String who) {
        var fresh = context.newPage();
        page = fresh;
        lastKey = "";
        fresh.navigate(lamp.toString());
        fresh.waitForSelector("#lamp[data-ready=yes]");
        if (fresh.locator(".other .field input").isVisible()) {
            fresh.locator(".field input").fill(who);
            fresh.locator(".field input").blur();
            fresh.locator(".other .away").click();
            fresh.waitForSelector(".next, .nothing");
        }
        return fresh;
    }

    Page page() {
        if (page == null) {
            throw new IllegalStateException("The page is not open");
        }
        return page;
    }

    /** The page is gone from one moment to the next. */
    void kill() {
        page().close(new Page.CloseOptions().setRunBeforeUnload(false));
        page = null;
    }

    /** No signal. */
    void outOfReach() {
        context.setOffline(true);
    }

    /** The signal is back, and the phone says so to its pages. */
    void inReach() {
        context.setOffline(false);
        page().evaluate("() => dispatchEvent(new Event('online'))");
    }

    /** The worker has laid the page on the phone. */
    void waitUntilKept() {
        page().waitForFunction("() => navigator.serviceWorker.ready.then(r => r.active.state === 'activated')");
        page().waitForFunction("() => navigator.serviceWorker.controller !== null");
    }

    /** One touch with one finger. */
    void touch(String selector) {
        if (selector.equals(lastKey)) {
            page().waitForTimeout(BETWEEN_TOUCHES_MS);
        }
        lastKey = selector;
        page().locator(selector).first().tap();
    }

    void key(String name) {
        touch(".view.tray [data-key=" + name + "]");
        if (name.equals("done")) {
            page().waitForSelector(".view.round:not([hidden])");
        }
    }

    /** Shows all other trays. */
    void unfold() {
        if (page().locator("details[open]").count() == 0) {
            touch("details summary");
        }
    }

    boolean inTray() {
        return page().locator(".view.tray").isVisible();
    }

    /** The tray that is open or offered. */
    String tray() {
        return page().locator(inTray() ? ".view.tray .number" : ".next .number")
                .textContent()
                .replace("Tray ", "");
    }

    /** All that was touched is on the phone's medium. */
    void settle() {
        page().waitForFunction("() => !document.querySelector('.sum.unwritten')");
    }

    /** Nothing waits any more. */
    void waitUntilSent() {
        if (inTray()) {
            touch(".view.tray [data-key=away]");
        }
        try {
            page().waitForFunction("() => document.querySelector('.desk').textContent.includes('Nothing waits')");
        } catch (PlaywrightException late) {
            throw new AssertionError(page().locator(".view.round").innerText(), late);
        }
    }
}
