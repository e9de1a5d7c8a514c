package eggwright.desk.today;

import eggwright.book.entry.RoundCheck;
import eggwright.book.name.MachineName;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.today.task.Bundle;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.TrayCount;
import eggwright.today.task.Urgency;
import eggwright.today.task.Where;
import eggwright.today.task.Work;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;

/** Work in words: a sentence with a verb. */
public final class TaskWords {

    private final Words words;

    public TaskWords(Locale language) {
        this.words = Words.beside(TaskWords.class, language);
    }

    Words words() {
        return words;
    }

    /** As "Candle set 14: 6 trays, 311 eggs, Setter, shelves 2 and 3, day 7". */
    public String sentence(Bundle bundle) {
        var details = details(bundle);
        return details.isEmpty()
                ? brief(bundle)
                : words.say("work.sentence", brief(bundle), String.join(", ", details));
    }

    /** As "Candle set 14". */
    public String brief(Bundle bundle) {
        var key = "task." + bundle.kind().word();
        if (bundle.first().work() instanceof Work.OfRound) {
            return words.say(
                    key + ".at",
                    Days.in(words.language()).hour(bundle.first().when().from()));
        }
        return bundle.set()
                .map(set -> words.say(key + ".of", words.say("work.set", set.text())))
                .orElseGet(() -> words.say(key));
    }

    private List<String> details(Bundle bundle) {
        var details = new ArrayList<String>();
        switch (bundle.first().work()) {
            case Work.OfTrays it -> {
                details.add(words.say("work.trays", bundle.trays().size()));
                details.add(eggs(bundle.trays()));
                places(bundle.places(), details);
                details.add(words.say("work.day", it.day()));
            }
            case Work.OfSet it -> {
                details.add(words.say("work.eggs", it.eggs()));
                details.add(words.say("work.day", it.day()));
            }
            case Work.OfEggs it -> details.add(words.say("work.eggs", it.eggs()));
            case Work.OfRound it -> bundle.machines().forEach(m -> details.add(m.text()));
            case Work.OfMachine it -> machines(bundle, details);
            case Work.OfOrders it -> details.add(words.say("work.chicks", chicks(bundle)));
        }
        return details;
    }

    private void machines(Bundle bundle, List<String> details) {
        var names = new LinkedHashSet<String>();
        var sets = new LinkedHashSet<String>();
        for (var task : bundle.tasks()) {
            if (task.work() instanceof Work.OfMachine it) {
                it.anyOf().forEach(m -> names.add(m.text()));
                it.sets().forEach(s -> sets.add(s.text()));
            }
        }
        if (!names.isEmpty()) {
            details.add(String.join(", ", names));
        }
        sets.forEach(set -> details.add(words.say("work.forSet", words.say("work.set", set))));
    }

    private static int chicks(Bundle bundle) {
        return bundle.tasks().stream()
                .mapToInt(t -> t.work() instanceof Work.OfOrders it ? it.chicks() : 0)
                .sum();
    }

    private String eggs(List<TrayCount> trays) {
        boolean together = trays.stream().anyMatch(t -> t.eggs() == null);
        int eggs = trays.stream()
                .map(TrayCount::eggs)
                .filter(Objects::nonNull)
                .mapToInt(Integer::intValue)
                .sum();
        return together ? words.say("work.together") : words.say("work.eggs", eggs);
    }

    /** Machine by machine, each with its shelves. */
    private void places(List<Where> places, List<String> details) {
        var shelves = new LinkedHashMap<MachineName, List<String>>();
        for (var where : places) {
            if (where.machine() != null) {
                var here = shelves.computeIfAbsent(where.machine(), m -> new ArrayList<>());
                if (where.section() != null) {
                    here.add(where.section().text());
                }
            }
        }
        shelves.forEach((machine, sections) -> {
            details.add(machine.text());
            if (sections.size() == 1) {
                details.add(words.say("work.shelf", sections.getFirst()));
            } else if (!sections.isEmpty()) {
                details.add(words.say("work.shelves", listed(sections)));
            }
        });
    }

    /** As "2, 3 and 4". */
    private String listed(List<String> parts) {
        return words.say("listed", String.join(", ", parts.subList(0, parts.size() - 1)), parts.getLast());
    }

    /** Where one task is: as "Setter, shelf 2". */
    public String place(Task task) {
        var place = new ArrayList<String>();
        places(List.of(task.where()), place);
        return place.isEmpty() ? words.say("work.nowhere") : String.join(", ", place);
    }

    /** As "Setter, shelf 2: trays 9 and 10". */
    public String shelf(Task task) {
        var trays = task.trays().stream().map(t -> t.tray().text()).toList();
        return words.say(
                "work.sentence",
                place(task),
                trays.size() == 1
                        ? words.say("work.tray", trays.getFirst())
                        : words.say("work.someTrays", trays.isEmpty() ? "" : listed(trays)));
    }

    /** As "tray 9, 54 eggs". */
    String tray(TrayCount tray) {
        var name = words.say("work.tray", tray.tray().text());
        return tray.eggs() == null ? name : words.say("work.trayEggs", name, tray.eggs());
    }

    /** What is looked at on a round: as "both bulbs, water, turner tilted, vents". */
    public String checks(List<RoundCheck> checks) {
        return words.say("check.bulbs")
                + checks.stream()
                        .map(c -> ", " + words.say("check." + c.name().toLowerCase(Locale.ROOT)))
                        .collect(Collectors.joining());
    }

    /** What sets it apart; empty for work of this hour. */
    public String mark(Urgency urgency) {
        return switch (urgency) {
            case OVERDUE, LATER_TODAY, STILL_POSSIBLE -> words.say("urgency." + urgency.word());
            case NOW, COMING, OVER -> "";
        };
    }

    /** The texts that must be there, whatever the season brings. */
    static List<String> keys() {
        var keys = new ArrayList<String>();
        for (var kind : TaskKind.values()) {
            keys.add("task." + kind.word());
            keys.add("task." + kind.word() + ".of");
        }
        for (var check : RoundCheck.values()) {
            keys.add("check." + check.name().toLowerCase(Locale.ROOT));
        }
        keys.add("task." + TaskKind.DAILY_ROUND.word() + ".at");
        return keys;
    }
}
