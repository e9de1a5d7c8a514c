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

    /** The inside of a file. */
    @FunctionalInterface
    interface Body {
        void writeTo(OutputStream out) throws IOException;
    }

    static Answer page(String template, Object page) {
        return new Page(200, template, page);
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
