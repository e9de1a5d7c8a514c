package eggwright.desk.link;

import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.SetPicture;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Reach;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.live.LiveBook;
import eggwright.desk.picture.QrCode;
import eggwright.desk.who.May;
import eggwright.desk.words.Words;
import eggwright.units.OutOfRange;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;

/**
 * From what is printed to what is meant. {@code /t/7} stands on a label that stays on tray 7, and opens the load that is in
 * it now; {@code /l/27-5/7} stands on a card of one load, and opens that one. Both have their code, as a drawing, under
 * {@code …/code.svg}.
 */
public final class LinkPages implements Pages {
    private final LiveBook book;
    private final Reach reach;

    public LinkPages(LiveBook book, Reach reach) {
        this.book = book;
        this.reach = reach;
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/t/{tray}", May.READ, this::tray);
        routes.read("/t/{tray}/code.svg", May.READ, this::trayCode);
        routes.read("/l/{set}/{tray}", May.READ, this::load);
        routes.read("/l/{set}/{tray}/code.svg", May.READ, this::loadCode);
    }

    private static Words words(Visit visit) {
        return Words.beside(LinkPages.class, visit.language());
    }

    private Answer tray(Visit visit) {
        return named(visit.at("tray"), TrayName::new)
                .flatMap(this::inItNow)
                .map(load -> page(load, visit))
                .orElseGet(() -> Answer.notThere(words(visit).say("tray.empty", visit.at("tray"))));
    }

    /** The load that went in last, of sets that still run; one that has eggs before one that was emptied. */
    private Optional<LoadPicture> inItNow(TrayName tray) {
        return book.picture().sets().values().stream()
                .filter(SetPicture::isRunning)
                .flatMap(set -> set.load(tray).stream())
                .max(Comparator.comparing(LinkPages::hasEggs).thenComparing(LoadPicture::setOn));
    }

    private static boolean hasEggs(LoadPicture load) {
        var now = load.eggsNow();
        return now == null || now > 0;
    }

    private Answer load(Visit visit) {
        return ref(visit)
                .flatMap(ref -> book.picture().set(ref.set()).flatMap(set -> set.load(ref.tray())))
                .map(load -> page(load, visit))
                .orElseGet(() -> Answer.notThere(words(visit).say("load.none", visit.at("tray"), visit.at("set"))));
    }

    /** To the lamp, where the tray can be candled by whoever may; else to the page of its set. */
    private static Answer page(LoadPicture load, Visit visit) {
        var set = encoded(load.ref().set().text());
        return load.phase() == LoadPhase.IN_SETTER && May.NOTE.lets(visit.visitor())
                ? Answer.onward("/lamp#" + set + "/" + encoded(load.ref().tray().text()))
                : Answer.onward("/sets/" + set);
    }

    private Answer trayCode(Visit visit) {
        return named(visit.at("tray"), TrayName::new)
                .map(tray -> code("/t/" + encoded(tray.text()), words(visit).say("tray.code", tray.text()), visit))
                .orElseGet(() -> Answer.notThere(words(visit).say("tray.empty", visit.at("tray"))));
    }

    private Answer loadCode(Visit visit) {
        return ref(visit)
                .map(ref -> code(
                        "/l/" + encoded(ref.set().text()) + "/"
                                + encoded(ref.tray().text()),
                        words(visit)
                                .say("load.code", ref.tray().text(), ref.set().text()),
                        visit))
                .orElseGet(() -> Answer.notThere(words(visit).say("load.none", visit.at("tray"), visit.at("set"))));
    }

    /** A code carries the desk’s fixed name. One that is not on the network has none that a phone could open. */
    private Answer code(String path, String title, Visit visit) {
        return reach.address()
                .map(desk -> Answer.drawing(QrCode.file(desk.resolve(path).toString(), title)))
                .orElseGet(() -> Answer.notThere(words(visit).say("noAddress")));
    }

    private static Optional<LoadRef> ref(Visit visit) {
        return named(visit.at("set"), SetName::new)
                .flatMap(set -> named(visit.at("tray"), TrayName::new).map(tray -> new LoadRef(set, tray)));
    }

    private static <N> Optional<N> named(String text, Function<String, N> name) {
        try {
            return Optional.of(name.apply(text));
        } catch (OutOfRange notAName) {
            return Optional.empty();
        }
    }

    private static String encoded(String name) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
