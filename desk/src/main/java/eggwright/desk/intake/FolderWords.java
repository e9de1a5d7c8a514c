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

    private final Words words;
    private final Function<Instant, String> stamp;

    FolderWords(Words words, Function<Instant, String> stamp) {
        this.words = words;
        this.stamp = stamp;
    }

    SensorsPage.FolderShown say(WatchedFolder.Looked looked) {
        var waiting = new ArrayList<SensorsPage.Waiting>();
        var taken = new ArrayList<String>();
        for (var file : looked.files()) {
            switch (file.state()) {
                case State.NotTaken(var at, var why) ->
                    waiting.add(new SensorsPage.Waiting(file.name(), reasons(why), help(why)));
                case State.Growing growing -> taken.add(words.say("file.growing", file.name()));
                case State.TakenBefore before -> taken.add(words.say("file.before", file.name()));
                case State.Taken(var at, var what) -> taken.add(taken(file.name(), at, what));
            }
        }
        return new SensorsPage.FolderShown(
                looked.at()
                        .map(at -> words.say("folder.looked", looked.folder(), stamp.apply(at)))
                        .orElseGet(() -> words.say("folder.notYet", looked.folder())),
                looked.trouble().isEmpty() ? "" : words.say("folder.trouble", looked.trouble()),
                waiting,
                taken);
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

    /** Whether there is such a file, by the name that the page gave it. */
    static boolean has(WatchedFolder.Looked looked, String name) {
        return looked.files().stream().map(WatchedFile::name).anyMatch(name::equals);
    }
}
