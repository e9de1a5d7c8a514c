package eggwright.desk;

import static java.nio.charset.StandardCharsets.UTF_8;

import eggwright.desk.assets.Assets;
import eggwright.desk.door.Headers;
import eggwright.desk.network.FirstSteps;
import eggwright.desk.network.Lan;
import eggwright.desk.part.OutsideShown;
import eggwright.desk.who.Visitor;
import eggwright.desk.words.Words;
import io.javalin.http.Context;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * Answers whoever comes without encryption, or under another name than the desk's: only how to get to the desk, and the
 * certificate that this takes. It sets no cookie and reads none.
 */
final class OpenSpeaker {
    private static final String STYLE = "css/whole.css";

    private final Setup setup;
    private final Painter painter;
    private final Assets assets;

    OpenSpeaker(Setup setup, Painter painter, Assets assets) {
        this.setup = setup;
        this.painter = painter;
        this.assets = assets;
    }

    /** What came in the open. */
    void answer(Context ctx, Lan lan) {
        var reads = ctx.req().getMethod().equals("GET") || ctx.req().getMethod().equals("HEAD");
        if (!reads) {
            steps(ctx, lan, 405);
        } else if (ctx.path().equals(FirstSteps.CERTIFICATE)) {
            Headers.ALWAYS.forEach(ctx::header);
            ctx.res().setContentType(null); // which also lets go of the charset that pages have
            ctx.status(200)
                    .contentType("application/x-x509-ca-cert")
                    .result(lan.authority().file());
        } else {
            steps(ctx, lan, ctx.path().equals("/") ? 200 : 404);
        }
    }

    /** The steps to the desk, on a page that needs nothing else. */
    void steps(Context ctx, Lan lan, int status) {
        var style = assets.text(STYLE);
        Headers.ALWAYS.forEach(ctx::header);
        if (!ctx.req().isSecure()) {
            // Browsers heed it over https only, and complain of it elsewhere.
            ctx.res().setHeader("Cross-Origin-Opener-Policy", null);
        }
        ctx.header("Content-Security-Policy", Headers.whole(sha256(style)));
        var page = FirstSteps.to(lan, setup.farm().get(), style, setup.language());
        var frame = new Frame(
                setup.farm().get(),
                Look.SYSTEM,
                new Visitor.Nobody(),
                "/",
                Words.beside(Desk.class, setup.language()),
                assets,
                OutsideShown.NOTHING);
        ctx.status(status)
                .contentType("text/html; charset=utf-8")
                .result(painter.paint(new Answer.Page(status, "network/first-steps.jte", page), frame));
    }

    private static String sha256(String style) {
        try {
            return Base64.getEncoder()
                    .encodeToString(MessageDigest.getInstance("SHA-256").digest(style.getBytes(UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java has SHA-256", impossible);
        }
    }
}
