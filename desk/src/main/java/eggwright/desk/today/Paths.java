package eggwright.desk.today;

import eggwright.today.task.Target;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where work is noted when done. */
final class Paths {
    private Paths() {}

    static String of(Target target) {
        return switch (target) {
            case Target.Form it -> {
                var asked = new ArrayList<String>();
                ask(asked, "set", it.set());
                ask(asked, "tray", it.tray());
                ask(asked, "machine", it.machine());
                ask(asked, "order", it.order());
                yield "/notes/" + it.kind() + (asked.isEmpty() ? "" : "?" + String.join("&", asked));
            }
            case Target.SetStory it -> "/sets/" + encoded(it.set().text());
            case Target.EggRoom it -> "/egg-room";
            case Target.Orders it -> "/notes/chicks-delivered";
        };
    }

    private static void ask(List<String> asked, String name, @Nullable Object value) {
        if (value != null) {
            asked.add(name + "=" + encoded(value.toString()));
        }
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
