package eggwright.intake.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.name.MachineName;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.Readings;
import eggwright.climate.reading.SensorName;
import eggwright.intake.MemoryReadings;
import eggwright.intake.Shelf2;
import eggwright.intake.file.ColumnMemory;
import eggwright.intake.file.ColumnsInMemory;
import eggwright.intake.file.FarmPlaces;
import eggwright.intake.file.FileShape;
import eggwright.intake.file.LoggerFiles;
import eggwright.intake.file.TakenFile;
import eggwright.intake.folder.WatchedFile.State;
import eggwright.intake.folder.WatchedFile.Why;
import eggwright.sheet.logger.LoggerFile;
import eggwright.sheet.logger.LoggerImport;
import eggwright.sheet.logger.Looked;
import eggwright.sheet.logger.TimeForm;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WatchedFolderTest {
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final String HEADER = "Time,Temp,RH\n";
    private static final String TWO_ROWS = HEADER + "2027-05-12 06:00,99.5,55\n2027-05-12 06:01,99.6,55\n";

    @TempDir
    private Path folder;

    private final Shelf2.SetClock clock = new Shelf2.SetClock();
    private final MemoryReadings readings = new MemoryReadings();
    private final ColumnsInMemory memory = new ColumnsInMemory();
    private final LoggerFiles files = new LoggerFiles(readings, memory);
    private FarmPlaces farm = new FarmPlaces(List.of("Setter", "Hatcher"), CHICAGO);
    private WatchedFolder watched;

    @BeforeEach
    void watch() {
        watched = afresh();
    }

    private WatchedFolder afresh() {
        return new WatchedFolder(folder, files, memory, () -> farm, clock);
    }

    /** As a keeper does it once, on the page or by command, in another machine's name. */
    private void confirm(String text) {
        confirm(text, CHICAGO, Optional.empty());
    }

    private void confirm(String text, ZoneId clockOfTheLogger, Optional<TimeForm> dates) {
        var file = LoggerFile.of(text.getBytes(StandardCharsets.UTF_8), "first.csv");
        var seen = (Looked.Seen) files.look(file, Optional.empty(), dates);
        var into = new LoggerImport.Into(
                Optional.of(new ReadingPlace.InMachine(new MachineName("Hatcher"))), clockOfTheLogger, clock.instant());
        assertInstanceOf(TakenFile.Kept.class, files.take(file, seen, into, CHICAGO));
    }

    private Path write(String name, String text) throws IOException {
        var file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private void grow(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardOpenOption.APPEND);
    }

    private State look(String name) {
        watched.look();
        return watched.looked().files().stream()
                .filter(f -> f.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError(watched.looked()))
                .state();
    }

    private State lookWhenStill(String name) {
        watched.look();
        clock.forward(WatchedFolder.STILL);
        return look(name);
    }

    private static Why why(State state) {
        return assertInstanceOf(State.NotTaken.class, state).why();
    }

    private Readings air(String machine) {
        return readings.between(
                new Channel(
                        new ReadingPlace.InMachine(new MachineName(machine)),
                        SensorName.ONLY,
                        Quantity.AIR_TEMPERATURE,
                        ReadingUnit.FAHRENHEIT),
                Instant.EPOCH,
                Instant.parse("2028-01-01T00:00:00Z"));
    }

    @Test
    void newFile_isTaken_whenItHasStoppedGrowing_andGoesToTheMachineOfItsSubFolder() throws IOException {
        confirm(TWO_ROWS);
        var file = write("Setter/may.csv", TWO_ROWS);
        assertEquals(new State.Growing(), look("Setter/may.csv"));
        assertEquals(new State.Growing(), look("Setter/may.csv"), "no time has passed");
        clock.forward(WatchedFolder.STILL.dividedBy(2));
        grow(file, "2027-05-12 06:02,99.7,55\n");
        assertEquals(new State.Growing(), look("Setter/may.csv"));
        clock.forward(WatchedFolder.STILL.dividedBy(2));
        assertEquals(new State.Growing(), look("Setter/may.csv"), "it grew meanwhile");
        assertTrue(air("Setter").isEmpty());
        clock.forward(WatchedFolder.STILL.dividedBy(2));

        var taken = assertInstanceOf(State.Taken.class, look("Setter/may.csv"));

        assertEquals(3, taken.what().rows());
        assertEquals(6, taken.what().fresh());
        assertEquals(Instant.parse("2027-05-12T11:00:00Z"), air("Setter").at(0), "six in the morning in Chicago");
        assertEquals(3, air("Setter").count());
        assertEquals(List.of("Setter"), List.of(folder.toFile().list()), "nothing was moved");
    }

    /** A logger that keeps UTC was said to do so once; its later files are not taken for the farm's time. */
    @Test
    void clockOfTheLogger_isRemembered_withItsColumns() throws IOException {
        confirm(TWO_ROWS, ZoneOffset.UTC, Optional.empty());
        write("Setter/may.csv", TWO_ROWS);
        assertInstanceOf(State.Taken.class, lookWhenStill("Setter/may.csv"));
        assertEquals(Instant.parse("2027-05-12T06:00:00Z"), air("Setter").at(0));
    }

    @Test
    void orderOfDaysAndMonths_isRemembered_whereAFileDoesNotTell() throws IOException {
        var first = HEADER + "04/05/2027 06:00,99.5,55\n";
        confirm(first, CHICAGO, Optional.of(TimeForm.DAY_FIRST));
        write("Setter/may.csv", HEADER + "05/05/2027 06:00,99.5,55\n");
        write("Setter/april.csv", HEADER + "04/13/2027 06:00,99.5,55\n");
        watched.look();
        clock.forward(WatchedFolder.STILL);
        assertInstanceOf(State.Taken.class, look("Setter/may.csv"));
        assertInstanceOf(State.Taken.class, look("Setter/april.csv"), "13 is no month: the file tells its own");
        assertEquals(
                Readings.of(Instant.parse("2027-04-13T11:00:00Z"), 99.5)
                        .and(Readings.of(Instant.parse("2027-05-05T11:00:00Z"), 99.5)),
                air("Setter"));
    }

    @Test
    void grownFile_isTakenAgain_andOnlyWhatIsNewIsNew() throws IOException {
        confirm(TWO_ROWS);
        var file = write("Setter/may.csv", TWO_ROWS);
        assertInstanceOf(State.Taken.class, lookWhenStill("Setter/may.csv"));
        grow(file, "2027-05-12 06:02,99.7,55\n");
        var again = assertInstanceOf(State.Taken.class, lookWhenStill("Setter/may.csv"));
        assertEquals(2, again.what().fresh());
        assertEquals(4, again.what().known());
    }

    @Test
    void takenFile_isNotReadAgain_afterAStart_unlessItHasChanged() throws IOException {
        confirm(TWO_ROWS);
        var file = write("Setter/may.csv", TWO_ROWS);
        lookWhenStill("Setter/may.csv");
        watched = afresh();
        assertEquals(new State.TakenBefore(), look("Setter/may.csv"));
        clock.forward(WatchedFolder.STILL);
        assertEquals(new State.TakenBefore(), look("Setter/may.csv"));
        grow(file, "2027-05-12 06:02,99.7,55\n");
        assertInstanceOf(State.Taken.class, lookWhenStill("Setter/may.csv"));
    }

    /** What its columns hold was guessed by looking, and no person has seen it: docs/decisions/0099. */
    @Test
    void fileOfAnUnknownHeader_waits_untilAPersonHasConfirmedOne() throws IOException {
        write("Setter/may.csv", TWO_ROWS);
        assertEquals(new Why.NotConfirmed(), why(lookWhenStill("Setter/may.csv")));
        assertTrue(air("Setter").isEmpty());
        confirm(TWO_ROWS);
        assertInstanceOf(State.Taken.class, look("Setter/may.csv"));
    }

    @Test
    void fileWithAMistake_isNamed_leftAsItIs_andAskedAgainWhenItChanges() throws IOException {
        confirm(TWO_ROWS);
        var spoilt = TWO_ROWS + "2027-05-12 06:02,warm,55\n";
        var file = write("Setter/may.csv", spoilt);
        var problems = assertInstanceOf(Why.Problems.class, why(lookWhenStill("Setter/may.csv")));
        assertTrue(
                problems.refused().problems().getFirst().words().contains("row 4, column \"Temp\": \"warm\""),
                problems.toString());
        assertTrue(air("Setter").isEmpty(), "all or nothing");
        assertEquals(spoilt, Files.readString(file));
        write("Setter/may.csv", spoilt.replace("warm", "99.7"));
        assertInstanceOf(State.Taken.class, lookWhenStill("Setter/may.csv"));
    }

    @Test
    void machine_isTheSubFolder_orInTheFile_orAskedFor() throws IOException {
        confirm(TWO_ROWS);
        var named = "Time,Machine,Temp\n2027-05-12 06:00,Hatcher,98.5\n2027-05-12 06:00,Setter,99.5\n";
        confirm(named);
        write("may.csv", TWO_ROWS);
        write("Seter/may.csv", TWO_ROWS);
        write("both.csv", named);
        write("Setter/2027/may.csv", TWO_ROWS);
        write("Setter/2027/05/12/night.csv", TWO_ROWS);
        watched.look();
        clock.forward(WatchedFolder.STILL);
        assertEquals(new Why.NoMachine(), why(look("may.csv")));
        assertEquals(new Why.UnknownMachine("Seter", "Setter"), why(look("Seter/may.csv")));
        assertEquals(new Why.TooDeep(), why(look("Setter/2027/may.csv")));
        assertEquals(new Why.TooDeep(), why(look("Setter/2027/05/12/night.csv")));
        assertInstanceOf(State.Taken.class, look("both.csv"));
        farm = new FarmPlaces(List.of("Setter", "Hatcher", "Seter"), CHICAGO);
        assertInstanceOf(State.Taken.class, look("Seter/may.csv"), "the machine was added meanwhile");
    }

    @Test
    void eggRoomAndBrooder_areSubFoldersToo() throws IOException {
        confirm(TWO_ROWS);
        write("Egg room/may.csv", TWO_ROWS);
        var taken = assertInstanceOf(State.Taken.class, lookWhenStill("Egg room/may.csv"));
        assertTrue(taken.what().channels().stream().allMatch(c -> c.place() instanceof ReadingPlace.EggRoom));
    }

    @Test
    void unfinishedAndHiddenFiles_arePassedOver_andAnEmptyOneIsWaitedFor() throws IOException {
        confirm(TWO_ROWS);
        write("Setter/.may.csv", TWO_ROWS);
        write("Setter/may.csv.part", TWO_ROWS);
        write(".trash/may.csv", TWO_ROWS);
        write("Setter/new.csv", "");
        assertEquals(new State.Growing(), lookWhenStill("Setter/new.csv"));
        assertEquals(1, watched.looked().files().size());
    }

    @Test
    void file_thatIsGone_isNoLongerNamed_andFolderThatIsGone_isSaid() throws IOException {
        var file = write("Setter/may.csv", "nothing");
        lookWhenStill("Setter/may.csv");
        Files.delete(file);
        watched.look();
        assertEquals(List.of(), watched.looked().files());
        Files.delete(folder.resolve("Setter"));
        Files.delete(folder);
        watched.look();
        assertTrue(!watched.looked().trouble().isEmpty());
        Files.createDirectories(folder);
        watched.look();
        assertEquals("", watched.looked().trouble());
    }

    /** As on a full disk: the fault is said, and the file is taken by itself when there is room. */
    @Test
    void fileThatCouldNotBeKept_isTriedAgain_afterAMinute() throws IOException {
        confirm(TWO_ROWS);
        readings.isFull = true;
        write("Setter/may.csv", TWO_ROWS);
        assertEquals(new Why.Broke("The disk is full"), why(lookWhenStill("Setter/may.csv")));
        readings.isFull = false;
        assertEquals(new Why.Broke("The disk is full"), why(look("Setter/may.csv")), "not at once again");
        clock.forward(WatchedFolder.AGAIN);
        assertInstanceOf(State.Taken.class, look("Setter/may.csv"));
        assertEquals(2, air("Setter").count());
    }

    @Test
    void watch_looksByItself() throws Exception {
        confirm(TWO_ROWS);
        write("Setter/may.csv", TWO_ROWS);
        var watch = Watch.over(watched);
        try {
            long end = System.nanoTime() + Duration.ofSeconds(20).toNanos();
            while (watched.looked().files().isEmpty() && System.nanoTime() < end) {
                Thread.sleep(20);
            }
            assertEquals(1, watched.looked().files().size());
        } finally {
            watch.close();
        }
    }

    /** By the walk itself: who runs the tests may be let in everywhere, as the machine's owner is. */
    @Test
    void whatCannotBeRead_isNamed_andKeepsNothingElseOut() throws IOException {
        var walk = new FolderWalk(folder);
        var lost = folder.resolve("lost+found");
        assertEquals(FileVisitResult.CONTINUE, walk.visitFileFailed(lost, new AccessDeniedException("lost+found")));
        assertEquals(
                FileVisitResult.CONTINUE,
                walk.postVisitDirectory(folder.resolve("Setter"), new IOException("Input/output error")));
        assertEquals(
                FileVisitResult.CONTINUE,
                walk.visitFileFailed(folder.resolve("gone.csv"), new NoSuchFileException("gone.csv")));
        assertEquals(List.of("Setter", "lost+found"), List.copyOf(walk.unreadable()), "what is gone is not named");
        assertThrows(IOException.class, () -> walk.visitFileFailed(folder, new AccessDeniedException("all of it")));
    }

    @Test
    void hiddenFolder_isNotEntered_andLinkThatLeadsNowhereIsNoFault() throws IOException {
        var hidden = Files.createDirectories(folder.resolve(".snapshots"));
        var attributes = Files.readAttributes(hidden, BasicFileAttributes.class);
        assertEquals(FileVisitResult.SKIP_SUBTREE, new FolderWalk(folder).preVisitDirectory(hidden, attributes));
        confirm(TWO_ROWS);
        Files.createSymbolicLink(folder.resolve("nowhere.csv"), folder.resolve("never.csv"));
        write("Setter/may.csv", TWO_ROWS);
        assertInstanceOf(State.Taken.class, lookWhenStill("Setter/may.csv"));
        assertEquals(1, watched.looked().files().size());
    }

    /** A list of all files after each of them costs the square of their number. */
    @Test
    void whatCameOfALook_isNotListedAnew_afterEveryFile() throws IOException {
        for (int i = 0; i < 5; i++) {
            write("Setter/may" + i + ".csv", TWO_ROWS);
        }
        var meanwhile = new HashSet<WatchedFolder.Looked>();
        watched = new WatchedFolder(
                folder,
                files,
                memory,
                () -> {
                    meanwhile.add(watched.looked());
                    return farm;
                },
                clock);
        watched.look();
        assertEquals(1, meanwhile.size());
        assertEquals(5, watched.looked().files().size());
    }

    @Test
    void fileThatIsKept_isNotCalledBroken_becauseItCannotBeReadAgain() throws IOException {
        confirm(TWO_ROWS);
        write("Setter/may.csv", TWO_ROWS);
        readings.isUnreadable = true;
        var taken = assertInstanceOf(State.Taken.class, lookWhenStill("Setter/may.csv"));
        assertEquals(new TakenFile.Odd.NotCounted(), taken.what().odd());
        readings.isUnreadable = false;
        assertEquals(2, air("Setter").count());
    }

    @Test
    void fileThatIsKept_isTaken_whereNothingCanBeRemembered() throws IOException {
        var forgetful = new ColumnMemory() {
            @Override
            public Optional<String> find(String name) {
                return memory.find(name);
            }

            @Override
            public void keep(String name, String value) {
                throw new IllegalStateException("The disk is full");
            }
        };
        confirm(TWO_ROWS);
        write("Setter/april.csv", TWO_ROWS);
        write("Setter/may.csv", TWO_ROWS);
        var forgetting = new LoggerFiles(readings, forgetful);
        watched = new WatchedFolder(
                folder, forgetting, forgetful, () -> new FarmPlaces(List.of("Setter"), ZoneOffset.UTC), clock);
        assertInstanceOf(State.Taken.class, lookWhenStill("Setter/april.csv"));
        assertInstanceOf(State.Taken.class, look("Setter/may.csv"), "and keeps no other file out");
        var other = LoggerFile.of("Time,T9\n2027-05-12 06:00,99.5\n".getBytes(StandardCharsets.UTF_8), "other.csv");
        var seen = (Looked.Seen) forgetting.look(other, Optional.empty(), Optional.empty());
        var into = new LoggerImport.Into(Optional.of(new ReadingPlace.Brooder()), CHICAGO, clock.instant());
        assertInstanceOf(TakenFile.Kept.class, forgetting.take(other, seen, into, CHICAGO), "columns of a new header");
    }

    private Optional<TakenFile> takeByHand(String name, String machine, FileShape before) {
        var path = folder.resolve(name);
        var file = LoggerFile.at(path);
        var seen = (Looked.Seen) files.look(file, Optional.empty(), Optional.empty());
        var into = new LoggerImport.Into(
                Optional.of(new ReadingPlace.InMachine(new MachineName(machine))), CHICAGO, clock.instant());
        return files.takeWhereItLies(path, before, file, seen, into, CHICAGO);
    }

    @Test
    void fileThatAPersonTook_isTakenAtOnce_andNotAgainUnderItsSubFolder() throws IOException {
        var file = write("Setter/may.csv", TWO_ROWS);
        assertEquals(new Why.NotConfirmed(), why(lookWhenStill("Setter/may.csv")));
        assertInstanceOf(
                TakenFile.Kept.class,
                takeByHand("Setter/may.csv", "Hatcher", FileShape.of(file)).orElseThrow());
        assertInstanceOf(
                State.Taken.class, watched.looked().files().getFirst().state(), "before the folder is looked at again");
        assertInstanceOf(State.Taken.class, look("Setter/may.csv"));
        clock.forward(WatchedFolder.AGAIN);
        assertInstanceOf(State.Taken.class, look("Setter/may.csv"));
        assertEquals(2, air("Hatcher").count());
        assertInstanceOf(
                TakenFile.Kept.class,
                takeByHand("Setter/may.csv", "Setter", FileShape.of(file)).orElseThrow(),
                "from a second window");
        assertTrue(air("Setter").isEmpty());
        watched = new WatchedFolder(folder, new LoggerFiles(readings, memory), memory, () -> farm, clock);
        assertEquals(new State.TakenBefore(), look("Setter/may.csv"), "known after a start as well");
        watched = afresh();
        assertInstanceOf(State.Taken.class, look("Setter/may.csv"));
        grow(file, "2027-05-12 06:02,99.7,55\n");
        assertEquals(new State.Growing(), look("Setter/may.csv"), "what is new in it is the folder's");
    }

    @Test
    void fileThatGrows_whileAPersonTakesIt_isNotKept_andIsTheFoldersAgain() throws IOException {
        confirm(TWO_ROWS);
        var file = write("Setter/may.csv", TWO_ROWS);
        var before = FileShape.of(file);
        grow(file, "2027-05-12 06:02,99.7,55\n");
        assertEquals(Optional.empty(), takeByHand("Setter/may.csv", "Setter", before));
        assertTrue(air("Setter").isEmpty());
        assertInstanceOf(State.Taken.class, lookWhenStill("Setter/may.csv"));
        assertEquals(3, air("Setter").count());
    }
}
