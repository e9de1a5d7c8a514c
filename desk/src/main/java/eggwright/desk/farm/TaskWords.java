package eggwright.desk.farm;

import eggwright.desk.words.Words;
import eggwright.today.task.Target;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.Urgency;
import eggwright.today.task.Where;
import eggwright.today.task.Work;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A piece of work in words: a sentence with a verb, and where it is noted when done. */
public final class TaskWords {
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final Words words;

    public TaskWords(Locale language) {
        this.words = Words.beside(TaskWords.class, language);
    }

    /** As "Candle set 14: 6 trays, 311 eggs, Setter, shelf 2, day 7". */
    public String sentence(Task task) {
        var details = new ArrayList<String>();
        switch (task.work()) {
            case Work.OfTrays it -> {
                details.add(words.say("work.trays", it.trays().size()));
                details.add(
                        it.traysCountedTogether() == 0
                                ? words.say("work.eggs", it.eggs())
                                : words.say("work.together"));
                place(task.where(), details);
                details.add(words.say("work.day", it.day()));
            }
            case Work.OfSet it -> {
                details.add(words.say("work.eggs", it.eggs()));
                details.add(words.say("work.day", it.day()));
            }
            case Work.OfEggs it -> details.add(words.say("work.eggs", it.eggs()));
            case Work.OfRound it -> {
                place(task.where(), details);
                details.add(HOUR.format(task.when().from()));
            }
            case Work.OfMachine it -> {
                var names = it.anyOf().stream().map(m -> m.text()).collect(Collectors.joining(", "));
                if (!names.isEmpty()) {
                    details.add(names);
                }
            }
            case Work.OfOrders it -> details.add(words.say("work.chicks", it.chicks()));
        }
        var set = task.set().map(s -> words.say("work.set", s.text())).orElse("");
        var key = "task." + task.kind().word();
        var what = set.isEmpty() ? words.say(key) : words.say(key + ".of", set);
        return details.isEmpty() ? what : words.say("work.sentence", what, String.join(", ", details));
    }

    private void place(Where where, List<String> details) {
        if (where.machine() != null) {
            details.add(where.machine().text());
        }
        if (where.section() != null) {
            details.add(words.say("work.shelf", where.section().text()));
        }
    }

    /** What sets it apart; empty for work of this hour. */
    public String mark(Urgency urgency) {
        return switch (urgency) {
            case OVERDUE, LATER_TODAY, STILL_POSSIBLE -> words.say("urgency." + urgency.word());
            case NOW, COMING, OVER -> "";
        };
    }

    /** Where it is noted when done. */
    public static String path(Target target) {
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

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    /** Kinds whose texts must be there: each with and without a set. */
    static List<String> keys() {
        var keys = new ArrayList<String>();
        for (var kind : TaskKind.values()) {
            keys.add("task." + kind.word());
            keys.add("task." + kind.word() + ".of");
        }
        return keys;
    }
}
