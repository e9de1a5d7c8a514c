package eggwright.desk;

import static java.nio.charset.StandardCharsets.UTF_8;

import eggwright.desk.assets.Assets;
import eggwright.desk.door.Door;
import eggwright.desk.door.Headers;
import eggwright.desk.door.Knock;
import eggwright.desk.door.Verdict;
import eggwright.desk.form.Typed;
import eggwright.desk.words.Words;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URLEncoder;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Turns requests into visits, and answers into responses. The only class that knows both. */
final class Speaker {
    private static final Logger LOG = LoggerFactory.getLogger(Speaker.class);

    private final Setup setup;
    private final Painter painter;
    private final Assets assets;

    Speaker(Setup setup, Painter painter, Assets assets) {
        this.setup = setup;
        this.painter = painter;
        this.assets = assets;
    }

    void atTheDoor(Context ctx, Door door) {
        Headers.ALWAYS.forEach(ctx::header);
        var length = ctx.req().getContentLengthLong();
        var knock = new Knock(
                ctx.req().getMethod(),
                Optional.ofNullable(ctx.header("Host")),
                Optional.ofNullable(ctx.header("Origin")),
                Optional.ofNullable(ctx.header("Sec-Fetch-Site")),
                length < 0 ? Optional.empty() : Optional.of(length));
        switch (door.judge(knock)) {
            case Verdict.Pass() -> {}
            case Verdict.Refused(var why) -> throw new HttpResponseException(why.status());
        }
    }

    void give(Context ctx, Route route) throws IOException {
        var visit = new Visit(
                ctx.path(),
                ctx.pathParamMap(),
                new Typed(ctx.queryParamMap()),
                new Typed(ctx.req().getMethod().equals("POST") ? ctx.formParamMap() : Map.of()),
                look(ctx),
                setup.language());
        // A form that was open when the colours were chosen comes back with them, and with all that was typed.
        visit.typed().one(Look.FIELD).flatMap(Look::of).ifPresent(chosen -> wear(ctx, chosen));
        switch (route.answer(visit)) {
            case Answer.Page page -> show(ctx, page);
            case Answer.Onward(var path) -> onward(ctx, path);
            case Answer.LookChosen(var look, var path) -> {
                wear(ctx, look);
                onward(ctx, path);
            }
            case Answer.NotThere(var what) -> notThere(ctx, what);
            case Answer.Download(var name, var type, var body) -> {
                ctx.contentType(type);
                ctx.header(
                        "Content-Disposition",
                        "attachment; filename*=UTF-8''"
                                + URLEncoder.encode(name, UTF_8).replace("+", "%20"));
                body.writeTo(ctx.outputStream());
            }
        }
    }

    void asset(Context ctx) {
        assets.served(ctx.pathParam("name"))
                .ifPresentOrElse(
                        asset -> {
                            var packs = asset.gzip().length > 0;
                            var packed = packs
                                    && Optional.ofNullable(ctx.header("Accept-Encoding"))
                                            .orElse("")
                                            .contains("gzip");
                            ctx.header("Cache-Control", Headers.ASSET_CACHE);
                            if (packs) {
                                ctx.header("Vary", "Accept-Encoding");
                            }
                            if (packed) {
                                ctx.header("Content-Encoding", "gzip");
                            }
                            ctx.contentType(asset.type()).result(packed ? asset.gzip() : asset.plain());
                        },
                        () -> notThere(ctx, Optional.empty()));
    }

    /** The server or the door refused; a page in words says which. */
    void problem(Context ctx, int status) {
        var key = "problem." + status;
        var words = words();
        if (words.knows(key + ".title")) {
            show(ctx, page(status, words.say(key + ".title"), words.say(key), words.say(key + ".next")));
        } else if (status < 500) {
            show(
                    ctx,
                    page(status, words.say("problem.title"), words.say("problem", status), words.say("problem.next")));
        } else {
            fault(ctx, new IllegalStateException("The server answered " + status));
        }
    }

    /** Something of ours broke: the log gets all of it, the visitor a note to quote. */
    void fault(Context ctx, Exception e) {
        var note = Note.fresh();
        LOG.error("Note {}: {} {} could not be answered", note, ctx.req().getMethod(), ctx.path(), e);
        var words = words();
        ctx.res().resetBuffer();
        show(ctx, page(500, words.say("fault.title"), words.say("fault", note), words.say("fault.next", note)));
    }

    /** The machine itself gave out (no memory left): a line of text, for a page might not be drawn. */
    void grave(HttpServletResponse response, Error e) {
        var note = Note.fresh();
        LOG.error("Note {}: the machine gave out", note, e);
        try {
            response.resetBuffer();
            response.setStatus(500);
            response.setContentType("text/plain; charset=utf-8");
            response.getOutputStream().write(words().say("fault", note).getBytes(UTF_8));
        } catch (IOException | IllegalStateException gone) {
            LOG.debug("Note {} could not be shown", note, gone);
        }
    }

    private void notThere(Context ctx, Optional<String> what) {
        var words = words();
        var happened = what.map(w -> words.say("notThere.named", w)).orElseGet(() -> words.say("problem.404"));
        show(ctx, page(404, words.say("problem.404.title"), happened, words.say("problem.404.next")));
    }

    private static Answer.Page page(int status, String title, String happened, String next) {
        return new Answer.Page(status, "problem/page.jte", new Problem(title, happened, next));
    }

    private void show(Context ctx, Answer.Page page) {
        var frame = new Frame(setup.farm().get(), look(ctx), asked(ctx), words(), assets);
        ctx.status(page.status()).contentType("text/html; charset=utf-8").result(painter.paint(page, frame));
    }

    /** What was asked for, with its question, so that a choice of look comes back to the same page. */
    private static String asked(Context ctx) {
        return Optional.ofNullable(ctx.queryString())
                .map(q -> ctx.path() + "?" + q)
                .orElse(ctx.path());
    }

    private static void onward(Context ctx, String path) {
        if (!OwnPath.is(path)) {
            throw new IllegalArgumentException("Not a path of this desk: " + path);
        }
        ctx.status(303).header("Location", path);
    }

    /** From now on, and on the page that answers this. */
    private static void wear(Context ctx, Look look) {
        ctx.res()
                .setHeader(
                        "Set-Cookie",
                        Look.COOKIE + "=" + look.word() + "; Path=/; Max-Age=34560000; SameSite=Strict; HttpOnly");
        ctx.attribute(Look.COOKIE, look);
    }

    private static Look look(Context ctx) {
        var worn = ctx.<Look>attribute(Look.COOKIE);
        if (worn != null) {
            return worn;
        }
        return Optional.ofNullable(ctx.cookie(Look.COOKIE)).flatMap(Look::of).orElse(Look.SYSTEM);
    }

    private Words words() {
        return Words.beside(Desk.class, setup.language());
    }
}
