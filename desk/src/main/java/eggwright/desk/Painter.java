package eggwright.desk;

import eggwright.desk.words.Words;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import java.util.Map;

/** Draws a page with its template, the frame around it, and the words of its feature. */
final class Painter {
    private final TemplateEngine engine;

    Painter(TemplateEngine engine) {
        this.engine = engine;
    }

    /** With the templates that were compiled with the desk. */
    static Painter precompiled() {
        return new Painter(TemplateEngine.createPrecompiled(ContentType.Html));
    }

    byte[] paint(Answer.Page page, Frame frame) {
        var out = new Utf8ByteOutput();
        var words = Words.beside(page.page().getClass(), frame.language());
        engine.render(page.template(), Map.of("frame", frame, "words", words, "page", page.page()), out);
        return out.toByteArray();
    }
}
