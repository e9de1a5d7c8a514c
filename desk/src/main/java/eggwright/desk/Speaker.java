package eggwright.desk;

import static java.nio.charset.StandardCharsets.UTF_8;

import eggwright.desk.assets.Assets;
import eggwright.desk.door.Door;
import eggwright.desk.door.Headers;
import eggwright.desk.door.Knock;
import eggwright.desk.door.Verdict;
import eggwright.desk.form.Typed;
import eggwright.desk.joining.Devices;
import eggwright.desk.network.Lan;
import eggwright.desk.part.OutsideShown;
import eggwright.desk.who.May;
import eggwright.desk.who.Role;
import eggwright.desk.who.Visitor;
import eggwright.desk.words.Words;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URLEncoder;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Turns requests into visits, and answers into responses. The only class that knows both. */
final class Speaker {
    private static final Logger LOG = LoggerFactory.getLogger(Speaker.class);

    /** Ten times the longest file that is taken. */
    private static final long LONGEST_PASSED = 10 * Desk.LONGEST_FILE_BYTES;

    private final Setup setup;
    private final Painter painter;
    private final Assets assets;
    private final OpenSpeaker inTheOpen;

    /** The doors of a desk; one that is not on the network has the same twice. */
    record Doors(Door thisMachine, Door network) {}

    Speaker(Setup setup, Painter painter, Assets assets) {
        this.setup = setup;
        this.painter = painter;
        this.assets = assets;
        this.inTheOpen = new OpenSpeaker(setup, painter, assets);
    }

    /** Whatever is not stopped here goes on to its route, which asks who may use it. */
    void atTheDoor(Context ctx, Doors doors) {
        switch (Listening.of(ctx, setup.reach())) {
            case THIS_MACHINE -> {
                Headers.ALWAYS.forEach(ctx::header);
                judge(ctx, doors.thisMachine());
            }
            case NETWORK -> {
                Headers.ALWAYS.forEach(ctx::header);
                if (doors.network().judge(knock(ctx)) instanceof Verdict.Refused(var why)
                        && why == Verdict.Reason.OTHER_NAME) {
                    inTheOpen.steps(ctx, lan(), why.status());
                    ctx.skipRemainingHandlers();
                } else {
                    ctx.header("Strict-Transport-Security", Headers.ONLY_HTTPS);
                    judge(ctx, doors.network());
                }
            }
            case IN_THE_OPEN -> {
                inTheOpen.answer(ctx, lan());
                ctx.skipRemainingHandlers();
            }
        }
    }

    private Lan lan() {
        return switch (setup.reach()) {
            case Reach.Network(var lan) -> lan;
            case Reach.ThisMachine only -> throw new IllegalStateException("This desk is not on the network");
        };
    }

    private static void judge(Context ctx, Door door) {
        switch (door.judge(knock(ctx))) {
            case Verdict.Pass() -> {}
            case Verdict.Refused(var why) -> throw new HttpResponseException(why.status());
        }
    }

    private static Knock knock(Context ctx) {
        var length = ctx.req().getContentLengthLong();
        return new Knock(
                ctx.req().getMethod(),
                ctx.path(),
                Optional.ofNullable(ctx.header("Host")),
                Optional.ofNullable(ctx.header("Origin")),
                Optional.ofNullable(ctx.header("Sec-Fetch-Site")),
                Optional.ofNullable(ctx.header("Content-Type")),
                length < 0 ? Optional.empty() : Optional.of(length));
    }

    /** Who asks. On the network a token says it, and the owner's goes before the device's. */
    private Visitor visitor(Context ctx) {
        return switch (Listening.of(ctx, setup.reach())) {
            case THIS_MACHINE -> new Visitor.ThisMachine();
            case IN_THE_OPEN -> new Visitor.Nobody();
            case NETWORK -> {
                for (var pass : List.of(Pass.OWNER, Pass.DEVICE)) {
                    var token = ctx.cookie(pass.cookie());
                    if (token != null) {
                        var known = lan().devices().known(token);
                        if (known.cookie() == Devices.Cookie.TO_BE_RENEWED) {
                            ctx.res().addHeader("Set-Cookie", pass.keeping(token));
                        }
                        if (!(known.visitor() instanceof Visitor.Nobody)) {
                            yield known.visitor();
                        }
                    }
                }
                yield new Visitor.Nobody();
            }
        };
    }

    void give(Context ctx, May may, Route route) throws IOException {
        var visitor = visitor(ctx);
        if (!may.lets(visitor)) {
            turnAway(ctx, visitor);
            return;
        }
        var writes = ctx.req().getMethod().equals("POST");
        var ofScript = isOfScript(ctx);
        var visit = new Visit(
                visitor,
                ctx.path(),
                ctx.pathParamMap(),
                new Typed(ctx.queryParamMap()),
                new Typed(writes && !ofScript ? ctx.formParamMap() : Map.of()),
                writes && ofScript ? text(ctx.bodyAsBytes()) : "",
                look(ctx),
                setup.language(),
                String.valueOf(ctx.req().getRemoteAddr()));
        // A form that was open when the colours were chosen comes back with them, and with all that was typed.
        visit.typed().one(Look.FIELD).flatMap(Look::of).ifPresent(chosen -> wear(ctx, chosen));
        switch (route.answer(visit)) {
            case Answer.Page page -> show(ctx, page);
            case Answer.Onward(var path) -> onward(ctx, path);
            case Answer.LookChosen(var look, var path) -> {
                wear(ctx, look);
                onward(ctx, path);
            }
            case Answer.CameIn(var pass, var token, var path) -> {
                ctx.res().addHeader("Set-Cookie", pass.keeping(token));
                onward(ctx, path);
            }
            case Answer.WentOut(var pass, var path) -> {
                ctx.res().addHeader("Set-Cookie", pass.forgetting());
                onward(ctx, path);
            }
            case Answer.NotYours() -> turnAway(ctx, visitor);
            case Answer.NotThere(var what) -> notThere(ctx, what);
            case Answer.Json(var status, var text) -> json(ctx, status, text);
            case Answer.Plain(var type, var text) -> ctx.contentType(type).result(text);
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

    /** What a thing with a token sends. The token alone says who it is: not the address that it came from. */
    void hear(Context ctx, May may, Hearing hearing) throws IOException {
        var visitor = bearer(ctx);
        if (!(visitor instanceof Visitor.Bearer(var token)) || !may.lets(visitor)) {
            // RFC 6750, section 3: where nothing was shown, nothing is said of what would be wrong with it.
            ctx.header("WWW-Authenticate", "Bearer realm=\"readings\"");
            var words = words();
            show(ctx, page(401, words.say("noToken.title"), words.say("noToken"), words.say("noToken.next")));
            return;
        }
        var tooLong = ctx.req().getContentLengthLong() > hearing.longest();
        var answer = tooLong
                ? hearing.tooLong(token)
                : hearing.hear(token, ctx.req().getInputStream().readNBytes(hearing.longest()));
        answer.headers().forEach(ctx::header);
        json(ctx, answer.status(), answer.json());
    }

    /** RFC 6750, section 2.1. Shown in any other way, as in the address, a token is none: addresses are written down. */
    private static Visitor bearer(Context ctx) {
        var header = Optional.ofNullable(ctx.header("Authorization")).orElse("").strip();
        var cut = header.indexOf(' ');
        return cut > 0 && header.substring(0, cut).equalsIgnoreCase("Bearer")
                ? new Visitor.Bearer(header.substring(cut + 1).strip())
                : new Visitor.Nobody();
    }

    /** The file of a form, where there is one and it is not empty of name and bytes. */
    static Optional<Brought> brought(Context ctx) {
        return Optional.ofNullable(ctx.uploadedFile(Brought.FIELD))
                .filter(file -> !file.filename().isBlank() || file.size() > 0)
                .map(file -> new Brought(file.filename(), file.size(), file::content));
    }

    private void turnAway(Context ctx, Visitor visitor) {
        var words = words();
        visitor.role()
                .ifPresentOrElse(
                        role -> show(
                                ctx,
                                page(
                                        403,
                                        words.say("notYours.title"),
                                        words.say(role == Role.LOOKER ? "notYours.looker" : "notYours.hand"),
                                        words.say("notYours.next"))),
                        () -> {
                            if (cameFromElsewhere(ctx) && OwnPath.is(asked(ctx))) {
                                ctx.header("Refresh", "0; url=" + asked(ctx));
                            }
                            ctx.header("WWW-Authenticate", "Device");
                            problem(ctx, 401);
                        });
    }

    /**
     * A phone's camera opens a code as if another site had, and then the browser holds the cookie back. Asked again by the
     * page itself, it gives it; so this happens at most once.
     */
    private static boolean cameFromElsewhere(Context ctx) {
        return ctx.req().getMethod().equals("GET")
                && !isOfScript(ctx)
                && "cross-site".equals(ctx.header("Sec-Fetch-Site"))
                && "navigate".equals(ctx.header("Sec-Fetch-Mode"));
    }

    private static boolean isOfScript(Context ctx) {
        return ctx.path().startsWith(Routes.API);
    }

    /** What is not UTF-8 is refused rather than mended, for an entry is kept as it was received. */
    private static String text(byte[] bytes) {
        try {
            return UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException notText) {
            throw new HttpResponseException(400);
        }
    }

    private static void json(Context ctx, int status, String text) {
        ctx.status(status).contentType("application/json; charset=utf-8").result(text);
    }

    Assets assets() {
        return assets;
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
        var isFile = status == 413 && ctx.path().equals(Door.FILES);
        if (isFile) {
            letPass(ctx);
        }
        var key = "problem." + status + (isFile ? ".file" : "");
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

    /** A browser reads no answer while it still sends: what is too long is read to its end, within reason, and thrown away. */
    private static void letPass(Context ctx) {
        if (ctx.req().getContentLengthLong() <= LONGEST_PASSED) {
            try {
                ctx.req().getInputStream().transferTo(OutputStream.nullOutputStream());
            } catch (IOException gone) {
                LOG.debug("What was too long was not sent to its end", gone);
            }
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

    private Answer.Page page(int status, String title, String happened, String next) {
        var joins = status == 401;
        return new Answer.Page(
                status,
                "problem/page.jte",
                new Problem(title, happened, next, joins ? "/join" : "/", words().say(joins ? "join" : "back")));
    }

    private void show(Context ctx, Answer.Page page) {
        if (page.page() instanceof Problem problem && isOfScript(ctx)) {
            json(ctx, page.status(), problem.json());
            return;
        }
        var visitor = visitor(ctx);
        var frame = new Frame(
                setup.farm().get(),
                look(ctx),
                visitor,
                asked(ctx),
                words(),
                assets,
                May.READ.lets(visitor) ? setup.outside().get() : OutsideShown.NOTHING);
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
                .addHeader(
                        "Set-Cookie",
                        Look.COOKIE + "=" + look.word() + "; Path=/; Max-Age=34560000; SameSite=Strict; HttpOnly"
                                + (ctx.req().isSecure() ? "; Secure" : ""));
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
