package eggwright.desk.lamp;

import eggwright.book.name.DeviceName;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.assets.Assets;
import eggwright.desk.live.LiveBook;
import eggwright.desk.who.May;
import eggwright.desk.words.Words;
import eggwright.wire.PhoneHolding;
import eggwright.wire.PhoneMail;
import eggwright.wire.RecordText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.CRC32;

/** The lamp page with its script, and what that script asks and sends. */
public final class LampPages implements Pages {
    private static final String PAGE = "/lamp";
    private static final String WORKER = "/lamp-worker.js";
    private static final String MANIFEST = "/lamp.webmanifest";

    private final LiveBook book;
    private final Holding holding = new Holding();
    private final LampTexts texts;
    private final MailRoom mailRoom;

    public LampPages(LiveBook book, Locale language) {
        this.book = book;
        var words = Words.beside(LampPages.class, language);
        this.texts = new LampTexts(words);
        this.mailRoom = new MailRoom(book, words);
    }

    @Override
    public void addTo(Routes routes) {
        var assets = routes.assets();
        routes.read(PAGE, May.NOTE, visit -> Answer.page("lamp/page.jte", texts.page()));
        routes.read(WORKER, May.ANYBODY, visit -> Answer.script(worker(assets)));
        routes.read(MANIFEST, May.ANYBODY, visit -> Answer.manifest(texts.manifest(assets)));
        routes.tell(
                "/api/lamp/round",
                May.NOTE,
                visit -> Answer.json(RecordText.of(round(visit.visitor().device()))));
        routes.take("/api/lamp/entries", May.NOTE, this::takeMail);
        routes.take("/api/lamp/holding", May.NOTE, this::hold);
    }

    private RoundTold round(DeviceName device) {
        return book.ask(ledger -> RoundTelling.of(ledger, book.time(), book.farm(), device, holding, texts.words()));
    }

    private Answer takeMail(Visit visit) {
        return switch (PhoneMail.read(visit.body())) {
            case PhoneMail.Mail.Whole(var mail) -> Answer.json(RecordText.of(mailRoom.take(mail, visit.visitor())));
            case PhoneMail.Mail.Malformed(var reason) -> new Answer.Json(422, RecordText.of(new Refused(reason)));
        };
    }

    private record Refused(String reason) {}

    private Answer hold(Visit visit) {
        return PhoneHolding.read(visit.body())
                .map(held -> {
                    holding.say(
                            visit.visitor().device(),
                            held.who(),
                            held.set(),
                            held.tray(),
                            held.state(),
                            book.time().toInstant());
                    return Answer.json("{}");
                })
                .orElseGet(() -> new Answer.Json(
                        422, RecordText.of(new Refused(texts.words().say("refused.holding")))));
    }

    /** The script of the worker, with the names of all that the page needs: another name, another worker. */
    private String worker(Assets assets) {
        var names = new ArrayList<String>();
        names.add(PAGE);
        names.add(MANIFEST);
        for (var needed : List.of(
                "js/lamp-page.js",
                "js/outside.js",
                "css/tokens.css",
                "css/base.css",
                "css/lamp.css",
                "icon/mark.svg",
                "icon/lamp.png")) {
            assets.withAllItNeeds(needed).stream()
                    .filter(n -> !names.contains(n))
                    .forEach(names::add);
        }
        var script = assets.served(assets.url("js/lamp-worker.js").substring(Assets.ROOT.length()))
                .orElseThrow();
        var crc = new CRC32();
        crc.update(script.plain());
        crc.update(names.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        crc.update(texts.page().words().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        return "const FILES = " + RecordText.of(new Files(Long.toHexString(crc.getValue()), names)) + ";\n"
                + new String(script.plain(), java.nio.charset.StandardCharsets.UTF_8);
    }

    private record Files(String version, List<String> names) {}
}
