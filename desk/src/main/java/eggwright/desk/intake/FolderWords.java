package eggwright.desk.intake;

import eggwright.desk.words.Words;
import eggwright.intake.file.TakenFile;
import eggwright.intake.folder.WatchedFile;
import eggwright.intake.folder.WatchedFile.State;
import eggwright.intake.folder.WatchedFile.Why;
import eggwright.intake.folder.WatchedFolder;
import eggwright.sheet.problem.Problem;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** What became of the files of the watched folder, in sentences. */
final class FolderWords {
    private static final int MOST_PROBLEMS = 5;
    /** So many files of either kind are listed: more than a person reads, and a page stays a page. */
    static final int MOST_FILES = 100;

    private final Words words;
    private final Function<Instant, String> stamp;

    FolderWords(Words words, Function<Instant, String> stamp) {
        this.words = words;
        this.stamp = stamp;
    }

    SensorsPage.FolderShown say(WatchedFolder.Looked looked) {
        var waiting = new ArrayList<SensorsPage.Waiting>();
        var taken = new ArrayList<String>();
        int inWaiting = 0;
        int others = 0;
        for (var file : looked.files()) {
            if (file.state() instanceof State.NotTaken(var at, var why)) {
                inWaiting++;
                if (inWaiting <= MOST_FILES) {
                    waiting.add(new SensorsPage.Waiting(file.name(), reasons(why), help(why)));
                }
            } else {
                others++;
                if (others <= MOST_FILES) {
                    taken.add(other(file));
                }
            }
        }
        return new SensorsPage.FolderShown(
                looked.at()
                        .map(at -> words.say("folder.looked", looked.folder(), stamp.apply(at)))
                        .orElseGet(() -> words.say("folder.notYet", looked.folder())),
                looked.trouble().isEmpty() ? "" : words.say("folder.trouble", looked.trouble()),
                waiting,
                more(inWaiting),
                words.say("folder.taken", others),
                taken,
                more(others));
    }

    private String more(int files) {
        return files > MOST_FILES ? words.say("folder.more", files - MOST_FILES) : "";
    }

    private String other(WatchedFile file) {
        return switch (file.state()) {
            case State.Growing growing -> words.say("file.growing", file.name());
            case State.TakenBefore before -> words.say("file.before", file.name());
            case State.Taken(var at, var what) -> taken(file.name(), at, what);
            case State.NotTaken waiting -> throw new IllegalArgumentException(file.name() + " waits");
        };
    }

    private String taken(String name, Instant at, TakenFile.Kept what) {
        return switch (what.odd()) {
            case TakenFile.Odd.Counted odd ->
                words.say("file.taken", name, stamp.apply(at), what.fresh(), what.known(), odd.heldBack());
            case TakenFile.Odd.NotCounted() ->
                words.say("file.takenNotCounted", name, stamp.apply(at), what.fresh(), what.known());
        };
    }

    private List<String> reasons(Why why) {
        return switch (why) {
            case Why.NotConfirmed() -> List.of(words.say("why.notConfirmed"));
            case Why.NoMachine() -> List.of(words.say("why.noMachine"));
            case Why.UnknownMachine(var folder, var near) ->
                List.of(
                        near.isEmpty()
                                ? words.say("why.unknownMachine", folder)
                                : words.say("why.nearMachine", folder, near));
            case Why.TooDeep() -> List.of(words.say("why.tooDeep"));
            case Why.Unreadable() -> List.of(words.say("why.unreadable"));
            case Why.Broke(var how) -> List.of(words.say("why.broke", how));
            case Why.Problems(var refused) -> {
                var said = new ArrayList<String>();
                refused.problems().stream()
                        .limit(MOST_PROBLEMS)
                        .map(problem -> ProblemWords.sayFromAfar(problem, words))
                        .forEach(said::add);
                int more = refused.problems().size() - MOST_PROBLEMS + refused.beyond();
                if (more > 0) {
                    said.add(words.say("problems.more", more));
                }
                yield said;
            }
        };
    }

    /** Whether a person's word on columns would help: not where the folder is wrong, nor the file itself. */
    private static SensorsPage.Help help(Why why) {
        return switch (why) {
            case Why.NotConfirmed confirmed -> SensorsPage.Help.LOOK;
            case Why.Problems(var refused) ->
                refused.problems().stream().map(Problem::row).allMatch(row -> row == null)
                        ? SensorsPage.Help.LOOK
                        : SensorsPage.Help.NONE;
            case Why.NoMachine machine -> SensorsPage.Help.LOOK;
            case Why.UnknownMachine machine -> SensorsPage.Help.NONE;
            case Why.TooDeep deep -> SensorsPage.Help.NONE;
            case Why.Unreadable unreadable -> SensorsPage.Help.NONE;
            case Why.Broke broke -> SensorsPage.Help.NONE;
        };
    }

    /** Whether such a file waits, by the name that the page gave it: one that was taken is not taken again. */
    static boolean waits(WatchedFolder.Looked looked, String name) {
        return looked.files().stream()
                .filter(file -> file.state() instanceof State.NotTaken)
                .map(WatchedFile::name)
                .anyMatch(name::equals);
    }
}
