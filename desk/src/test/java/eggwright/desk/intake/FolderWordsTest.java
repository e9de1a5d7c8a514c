package eggwright.desk.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.desk.words.Words;
import eggwright.intake.folder.WatchedFile;
import eggwright.intake.folder.WatchedFile.State;
import eggwright.intake.folder.WatchedFile.Why;
import eggwright.intake.folder.WatchedFolder;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class FolderWordsTest {
    private final FolderWords words =
            new FolderWords(Words.beside(FolderWordsTest.class, Locale.ENGLISH), Instant::toString);

    private SensorsPage.FolderShown of(int files, State state) {
        return words.say(new WatchedFolder.Looked(
                Path.of("loggers"),
                Optional.empty(),
                "",
                IntStream.range(0, files)
                        .mapToObj(i -> new WatchedFile(i + ".csv", state))
                        .toList()));
    }

    @Test
    void thousandsOfFiles_areCounted_andTheFirstHundredListed() {
        var waiting = of(2_000, new State.NotTaken(Instant.EPOCH, new Why.Unreadable()));
        assertEquals(FolderWords.MOST_FILES, waiting.waiting().size());
        assertEquals("And 1,900 more.", waiting.moreWaiting());
        var before = of(2_000, new State.TakenBefore());
        assertEquals(FolderWords.MOST_FILES, before.taken().size());
        assertEquals("And 1,900 more.", before.moreTaken());
        assertEquals("2,000 other files", before.takenTitle());
        assertEquals("", of(FolderWords.MOST_FILES, new State.TakenBefore()).moreTaken());
    }
}
