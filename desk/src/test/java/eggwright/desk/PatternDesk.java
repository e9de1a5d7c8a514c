package eggwright.desk;

import eggwright.desk.pattern.Patterns;
import gg.jte.CodeResolver;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.resolve.DirectoryCodeResolver;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;

/** A desk that also knows the templates of the tests. */
@NullMarked
final class PatternDesk {
    private PatternDesk() {}

    static Desk open() {
        var main = new DirectoryCodeResolver(Path.of("src/main/jte"));
        var test = new DirectoryCodeResolver(Path.of("src/test/jte"));
        var both = new CodeResolver() {
            @Override
            public @Nullable String resolve(String name) {
                var found = test.resolve(name);
                return found == null ? main.resolve(name) : found;
            }

            @Override
            public long getLastModified(String name) {
                return 0;
            }
        };
        var engine = TemplateEngine.create(both, Path.of("target/jte-test"), ContentType.Html);
        engine.setTrimControlStructures(true);
        return Desk.open(
                new Setup(() -> "Larkfield Game Farm", Locale.ENGLISH, 0, List.of(new Patterns())),
                new Painter(engine));
    }
}
