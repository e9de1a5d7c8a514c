package eggwright.sheet.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.name.MachineName;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.Readings;
import eggwright.climate.reading.SensorName;
import eggwright.sheet.problem.Problem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.dhatim.fastexcel.Workbook;
import org.junit.jupiter.api.Test;

/** Files as loggers write them; all invented, none of a known product. */
class LoggerImportTest {
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final Instant JUNE = Instant.parse("2027-06-01T00:00:00Z");
    private static final ReadingPlace SETTER = new ReadingPlace.InMachine(new MachineName("Setter 1"));

    private static Looked look(String text) {
        return look(text, Optional.empty());
    }

    private static Looked look(String text, Optional<String> said) {
        return LoggerImport.look(
                LoggerFile.of(text.getBytes(StandardCharsets.UTF_8), "log.csv"),
                said.map(s -> ((LoggerColumns.Parsed.Whole) LoggerColumns.parse(s)).columns()),
                Optional.empty());
    }

    private static String columns(String text) {
        return switch (look(text)) {
            case Looked.Seen seen -> seen.columns().text();
            case Looked.InDoubt doubt -> words(doubt.questions());
        };
    }

    private static String words(java.util.List<Problem> problems) {
        return problems.stream().map(Problem::words).collect(Collectors.joining("\n"));
    }

    private static Map<Channel, Readings> loaded(byte[] bytes) {
        return loaded(LoggerFile.of(bytes, "log.csv"));
    }

    private static Map<Channel, Readings> loaded(LoggerFile file) {
        var looked = LoggerImport.look(file, Optional.empty(), Optional.empty());
        var seen = assertInstanceOf(Looked.Seen.class, looked, looked::toString);
        var shelf = new Shelf();
        var outcome = LoggerImport.load(file, seen, new LoggerImport.Into(Optional.of(SETTER), CHICAGO, JUNE), shelf);
        assertInstanceOf(LoggerImport.Outcome.Loaded.class, outcome, outcome::toString);
        return shelf.all();
    }

    /** What the only thermometer in Setter 1 read. */
    private static Readings fahrenheit(String text) {
        return loaded(text).getOrDefault(air(ReadingUnit.FAHRENHEIT), Readings.NONE);
    }

    private static Map<Channel, Readings> loaded(String text) {
        return loaded(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String refused(String text, ZoneId zone) {
        var file = LoggerFile.of(text.getBytes(StandardCharsets.UTF_8), "log.csv");
        var seen = assertInstanceOf(Looked.Seen.class, LoggerImport.look(file, Optional.empty(), Optional.empty()));
        return switch (LoggerImport.load(
                file, seen, new LoggerImport.Into(Optional.of(SETTER), zone, JUNE), new Shelf())) {
            case LoggerImport.Outcome.Refused(var problems, var beyond) -> words(problems);
            case LoggerImport.Outcome.Loaded loaded -> "taken: " + loaded;
        };
    }

    private static Channel air(ReadingUnit unit) {
        return new Channel(SETTER, SensorName.ONLY, Quantity.AIR_TEMPERATURE, unit);
    }

    private static Readings at(String instant, double value) {
        return Readings.of(Instant.parse(instant), value);
    }

    @Test
    void columns_areFoundByTheirNames() {
        assertEquals(
                "No=left,Date/Time=time,Temp (°F)=air_temperature_f,RH (%)=humidity_pct,Dew point (°F)=left",
                columns("""
                        No,Date/Time,Temp (°F),RH (%),Dew point (°F)
                        1,2027-04-05 06:00:00,99.5,55.1,80.1
                        2,2027-04-05 06:01:00,99.6,55.0,80.0
                        """));
    }

    @Test
    void unit_isToldByTheReadings_whereTheNameDoesNot() {
        var seen = assertInstanceOf(Looked.Seen.class, look("""
                time,temperature
                2027-04-05 06:00,99.5
                2027-04-05 06:05,99.6
                """));
        assertEquals("time=time,temperature=air_temperature_f", seen.columns().text());
        assertTrue(seen.notes().getFirst().contains("taken for °F"), seen.notes()::toString);
    }

    @Test
    void fahrenheit_isAsked_whereTheNameSaysCelsius() {
        assertEquals(
                "log.csv, column \"Temp °C\": \"99.5\" is no temperature of eggs or chicks in °C: is it Fahrenheit."
                        + " Then say so, as in --columns \"Temp °C=air_temperature_f\".",
                columns("""
                        Time,Temp °C
                        2027-04-05 06:00,99.5
                        2027-04-05 06:05,99.5
                        """));
    }

    @Test
    void aPersonsWord_goesBeforeLooking() {
        var seen = assertInstanceOf(
                Looked.Seen.class, look("""
                        When,A,B
                        2027-04-05 06:00,99.5,86.0
                        2027-04-05 06:05,99.4,86.1
                        """, Optional.of("When=time,A=air_temperature_f,B=wet_bulb_f")));
        assertEquals(
                "When=time,A=air_temperature_f,B=wet_bulb_f", seen.columns().text());
    }

    /** So that a page can show what it asks about. */
    @Test
    void fileThatIsAskedAbout_showsItsRows_andWhatIsKnownOfItsColumns() {
        var doubt = assertInstanceOf(Looked.InDoubt.class, look("Time,Temp,RH\n2027-04-05 06:00,34.5,55\n"));
        assertEquals(List.of("Time", "Temp", "RH"), doubt.header());
        assertEquals(List.of(List.of("2027-04-05 06:00", "34.5", "55")), doubt.some());
        assertEquals("Time=time,Temp=left,RH=humidity_pct", doubt.columns().text());
        assertEquals("Temp", doubt.questions().getFirst().column());
    }

    @Test
    void unknownColumn_isNamed_withTheNearOne() {
        var doubt = assertInstanceOf(
                Looked.InDoubt.class,
                look("Time,Temp °F\n2027-04-05 06:00,99.5\n", Optional.of("Time=time,Tmp °F=air_temperature_f")));
        assertTrue(
                words(doubt.questions()).contains("has no column \"Tmp °F\". Is it \"Temp °F\"?"),
                () -> words(doubt.questions()));
    }

    @Test
    void dates_areToldByTheirOrder_whereDaysOrMonthsMayComeFirst() {
        // Hours from 4 to 6 May: with months first there would be a leap of a month at each midnight.
        var rows = new StringBuilder("Time,Temp °F\n");
        for (int day = 4; day <= 6; day++) {
            for (int hour = 0; hour < 24; hour++) {
                rows.append("0%d/05/2027 %02d:00,99.5%n".formatted(day, hour));
            }
        }
        assertEquals(
                Instant.parse("2027-05-04T05:00:00Z"),
                fahrenheit(rows.toString()).at(0));
    }

    @Test
    void dates_areAsked_whereNothingTells() {
        assertTrue(columns("Time,Temp °F\n04/05/2027 06:00,99.5\n04/05/2027 06:10,99.5\n")
                .contains("may have the day or the month first. Say which: --dates day-first or --dates month-first."));
    }

    @Test
    void titles_aboveTheTable_arePassedOver() {
        assertEquals(
                at("2027-03-25T11:00:00Z", 37.5).and(at("2027-03-25T11:10:00Z", 37.6)),
                loaded("""
                        Cellar logger
                        Serial;4711

                        Date;Time;Temp [C];Hum [%]
                        25.03.2027;06:00:00;37,5;55,1
                        25.03.2027;06:10:00;37,6;
                        """).get(air(ReadingUnit.CELSIUS)));
    }

    @Test
    void unitsBelowTheHeader_areReadAsPartOfIt() {
        var text = """
                Cellar logger,,
                When,Temperature,Humidity
                ,°C,%
                2027-03-25 06:00,37.5,55.1
                2027-03-25 06:10,37.6,55.0
                """;
        assertEquals("When=time,Temperature °C=air_temperature_c,Humidity %=humidity_pct", columns(text));
        assertEquals(
                at("2027-03-25T11:00:00Z", 37.5).and(at("2027-03-25T11:10:00Z", 37.6)),
                loaded(text).get(air(ReadingUnit.CELSIUS)));
    }

    @Test
    void oddRow_isNamed_whetherTheFileHasAHeaderOrNot() {
        // Beyond what is looked at before.
        var rows = "2027-03-25 06:00,99.5\n".repeat(6_000) + "lost,99.5\n,99.3\n";
        for (var header : java.util.List.of("Time,Temp °F\n", "")) {
            var text = header + rows;
            var seen = assertInstanceOf(
                    Looked.Seen.class,
                    look(
                            text,
                            header.isEmpty()
                                    ? Optional.of("column 1=time,column 2=air_temperature_f")
                                    : Optional.empty()));
            var file = LoggerFile.of(text.getBytes(StandardCharsets.UTF_8), "log.csv");
            var outcome = LoggerImport.load(
                    file, seen, new LoggerImport.Into(Optional.of(SETTER), CHICAGO, JUNE), new Shelf());
            var refused = assertInstanceOf(LoggerImport.Outcome.Refused.class, outcome);
            int first = header.isEmpty() ? 6_001 : 6_002;
            assertTrue(
                    words(refused.problems()).contains("row " + first + ": \"lost\" is not a time like those above"),
                    () -> words(refused.problems()));
            assertTrue(
                    words(refused.problems()).contains("row " + (first + 1) + ": has no time"),
                    () -> words(refused.problems()));
        }
    }

    @Test
    void rowWithoutAMachine_isNamed_whereTheOthersNameOne() {
        var text = """
                Machine,Time,Temp °F
                Setter 1,2027-03-25 06:00,99.5
                ,2027-03-25 06:10,99.4
                """;
        var seen = assertInstanceOf(Looked.Seen.class, look(text));
        var file = LoggerFile.of(text.getBytes(StandardCharsets.UTF_8), "log.csv");
        var outcome =
                LoggerImport.load(file, seen, new LoggerImport.Into(Optional.empty(), CHICAGO, JUNE), new Shelf());
        var refused = assertInstanceOf(LoggerImport.Outcome.Refused.class, outcome);
        assertTrue(words(refused.problems()).contains("row 3: names no machine"), () -> words(refused.problems()));
    }

    @Test
    void fileInUtf16_withTabs_isRead() {
        Charset utf16 = StandardCharsets.UTF_16;
        var read = loaded("Time\tTemp °F\n4/13/2027 6:00:00 AM\t99.5\n4/13/2027 6:00:00 PM\t99.4\n".getBytes(utf16));
        assertEquals(
                at("2027-04-13T11:00:00Z", 99.5).and(at("2027-04-13T23:00:00Z", 99.4)),
                read.get(air(ReadingUnit.FAHRENHEIT)));
    }

    @Test
    void workbook_isReadAsAFileIs() throws IOException {
        var out = new ByteArrayOutputStream();
        try (var book = new Workbook(out, "test", "1.0")) {
            var sheet = book.newWorksheet("log");
            sheet.value(0, 0, "Time");
            sheet.value(0, 1, "Temp °F");
            sheet.value(1, 0, LocalDateTime.of(2027, 4, 5, 6, 0));
            sheet.style(1, 0).format("yyyy-mm-dd hh:mm").set();
            sheet.value(1, 1, 99.5);
            sheet.value(2, 0, LocalDateTime.of(2027, 4, 5, 6, 10));
            sheet.style(2, 0).format("yyyy-mm-dd hh:mm").set();
            sheet.value(2, 1, 99.6);
        }
        assertEquals(
                at("2027-04-05T11:00:00Z", 99.5).and(at("2027-04-05T11:10:00Z", 99.6)),
                loaded(LoggerFile.of(out.toByteArray(), "log.xlsx")).get(air(ReadingUnit.FAHRENHEIT)));
    }

    @Test
    void severalMachines_inOneFile_areToldApart() {
        var read = loaded("""
                time,machine,temp_c
                2027-04-05T06:00:00Z,Setter 1,37.5
                2027-04-05T06:00:00Z,Hatcher,36.9
                2027-04-05T06:00:00Z,egg room,14.2
                """);
        assertEquals(3, read.size());
        assertEquals(
                at("2027-04-05T06:00:00Z", 14.2),
                read.get(new Channel(
                        new ReadingPlace.EggRoom(), SensorName.ONLY, Quantity.AIR_TEMPERATURE, ReadingUnit.CELSIUS)));
    }

    @Test
    void severalProbes_inOneFile_areSensorsOfTheirOwn() {
        var read = loaded("""
                time,Probe 1 °C,Probe 2 °C
                2027-04-05T06:00:00Z,37.5,37.4
                """);
        assertEquals(
                at("2027-04-05T06:00:00Z", 37.4),
                read.get(new Channel(
                        SETTER, new SensorName("Probe 2 °C"), Quantity.AIR_TEMPERATURE, ReadingUnit.CELSIUS)));
    }

    @Test
    void hourThatComesTwice_isToldByTheOrderOfTheRows() {
        // Clocks in Chicago went back on 1 November 2026 at 02:00.
        var autumn = fahrenheit("""
                Time,Temp °F
                2026-11-01 00:30,99.1
                2026-11-01 01:00,99.2
                2026-11-01 01:30,99.3
                2026-11-01 01:00,99.4
                2026-11-01 01:30,99.5
                2026-11-01 02:00,99.6
                """);
        assertEquals(6, autumn.count());
        for (int i = 0; i < 6; i++) {
            assertEquals(Instant.parse("2026-11-01T05:30:00Z").plusSeconds(1800L * i), autumn.at(i));
            assertEquals(99.1 + i / 10.0, autumn.value(i), 1e-9);
        }
    }

    @Test
    void hourThatComesTwice_isToldInAFileThatRunsBackwards() {
        var autumn = fahrenheit("""
                Time,Temp °F
                2026-11-01 02:00,99.6
                2026-11-01 01:30,99.5
                2026-11-01 01:00,99.4
                2026-11-01 01:30,99.3
                2026-11-01 01:00,99.2
                2026-11-01 00:30,99.1
                """);
        for (int i = 0; i < 6; i++) {
            assertEquals(Instant.parse("2026-11-01T05:30:00Z").plusSeconds(1800L * i), autumn.at(i));
            assertEquals(99.1 + i / 10.0, autumn.value(i), 1e-9);
        }
    }

    @Test
    void hourThatClocksLeaptOver_isRefused_withTheLikelyReason() {
        assertEquals(
                "log.csv, row 3: \"2027-03-14 02:30\" is in the hour that clocks leapt over in America/Chicago."
                        + " If the logger keeps another time, say which, as in --zone UTC.",
                refused("Time,Temp °F\n2027-03-14 01:30,99.5\n2027-03-14 02:30,99.5\n", CHICAGO));
    }

    @Test
    void timeStillToCome_isRefused_withTheLikelyReason() {
        assertTrue(refused("Time,Temp °F\n2027-06-01 06:00,99.5\n", CHICAGO)
                .contains("is still to come in America/Chicago"));
    }

    @Test
    void wordInTheColumn_isNamedWithItsRow_andNothingIsTaken() {
        assertEquals(
                "log.csv, row 3, column \"Temp °F\": \"warm\" is not a number."
                        + " Write a number, or leave the cell empty where nothing was read.",
                refused("Time,Temp °F\n2027-04-05 06:00,99.5\n2027-04-05 06:10,warm\n2027-04-05 06:20,--\n", CHICAGO));
    }

    @Test
    void columnsText_comesBackAsItWas() {
        var text = "\"a,b\"=time,\"c=d\"=air_temperature_f,x=left";
        assertEquals(
                text,
                assertInstanceOf(LoggerColumns.Parsed.Whole.class, LoggerColumns.parse(text))
                        .columns()
                        .text());
    }

    @Test
    void columnsText_thatIsWrong_isToldWhatWouldBeRight() {
        assertTrue(LoggerColumns.parse("Temp=warmth") instanceof LoggerColumns.Parsed.Wrong(var why)
                && why.startsWith("\"warmth\" is nothing that a column can hold. Write one of time, date"));
    }
}
