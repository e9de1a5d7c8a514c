package eggwright.desk;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/** What a page gives back. */
public sealed interface Answer {
    /**
     * A page, drawn by its template.
     *
     * @param status of HTTP
     * @param template under src/main/jte, as {@code candling/page.jte}
     * @param page what is shown; its package's words go with it
     */
    record Page(int status, String template, Object page) implements Answer {}

    /** Kept; the browser goes on to a page that shows what was kept. */
    record Onward(String path) implements Answer {}

    /** This browser is to remember how it wants its pages. */
    record LookChosen(Look look, String path) implements Answer {}

    /**
     * There is nothing here.
     *
     * @param what in the visitor's words, as "set 14"; empty for a page that never was
     */
    record NotThere(Optional<String> what) implements Answer {}

    /** A file to keep, written as it is made. */
    record Download(String fileName, String type, Body body) implements Answer {}

    /** This device has come in; the browser keeps its token, which no script can read. */
    record CameIn(Pass pass, String token, String path) implements Answer {}

    /** This device is out again; the browser forgets its token. */
    record WentOut(Pass pass, String path) implements Answer {}

    /** There is such a thing here, but it is not for this visitor. */
    record NotYours() implements Answer {}

    /** For a script: JSON, as it is to be sent. */
    record Json(int status, String text) implements Answer {}

    /**
     * A text that is no page and lies under a fixed address: the script of a worker, a manifest, a drawing. A browser
     * asks again each time whether it has changed.
     *
     * @param type for the Content-Type header, as {@code text/javascript; charset=utf-8}
     */
    record Plain(String type, String text) implements Answer {}

    /** The inside of a file. */
    @FunctionalInterface
    interface Body {
        void writeTo(OutputStream out) throws IOException;
    }

    static Answer page(String template, Object page) {
        return new Page(200, template, page);
    }

    static Answer json(String text) {
        return new Json(200, text);
    }

    /** A script that runs beside the pages. */
    static Answer script(String text) {
        return new Plain("text/javascript; charset=utf-8", text);
    }

    /** What a phone needs to keep the pages on its first screen. */
    static Answer manifest(String json) {
        return new Plain("application/manifest+json; charset=utf-8", json);
    }

    /** A drawing by itself. */
    static Answer drawing(String svg) {
        return new Plain("image/svg+xml; charset=utf-8", svg);
    }

    /** The form again, with all that was typed and what is to be mended. */
    static Answer refused(String template, Object page) {
        return new Page(422, template, page);
    }

    /** On to a path of this desk. */
    static Answer onward(String path) {
        return new Onward(path);
    }

    static Answer notThere(String what) {
        return new NotThere(Optional.of(what));
    }
}
