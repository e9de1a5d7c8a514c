package eggwright.intake.message;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingStore.Taken;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.Readings;
import eggwright.climate.reading.ReadingsGathered;
import eggwright.intake.Shelf2;
import eggwright.intake.message.Complaint.Kind;
import eggwright.intake.sensor.Sensors;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class IntakeTest {
    private final Shelf2 shelf = new Shelf2();

    private Intake.Outcome send(String body) {
        return send(body, Delivery.LIVE);
    }

    private Intake.Outcome send(String body, Delivery delivery) {
        return shelf.intake.take(shelf.token(), body.getBytes(UTF_8), delivery);
    }

    private Readings kept() {
        return shelf.readings.between(Shelf2.CHANNEL, Instant.EPOCH, Shelf2.NOON.plus(Duration.ofDays(9)));
    }

    private static Kind refused(Intake.Outcome outcome) {
        return assertInstanceOf(Intake.Outcome.Refused.class, outcome).why().kind();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "99.5",
                " 99.5\r\n",
                "+99.50",
                "995e-1",
                "99.5F",
                "99.5 °F",
                "{\"value\":99.5}",
                "[{\"value\":99.5}]",
                "{\"value\": 9.95e1, \"unit\": \"F\"}"
            })
    void number_isTakenAsOfNow(String body) {
        assertEquals(new Intake.Outcome.Kept(shelf.added.sensor(), new Taken(1, 0), OptionalLong.of(0)), send(body));
        assertEquals(Readings.of(Shelf2.NOON, 99.5), kept());
    }

    /** RFC 3339 (ISO 8601), section 5.8: both name the same instant. */
    @ParameterizedTest
    @ValueSource(strings = {"1996-12-20T00:39:57Z", "1996-12-19T16:39:57-08:00"})
    void time_isReadWithItsOffset(String at) {
        assertEquals(
                new Moments.Read.Wrong(Kind.CLOCK_NEVER_SET),
                new Moments(Shelf2.NOON).read(at),
                "long before any farm");
        var later = at.replaceFirst("^1996", "2026");
        assertEquals(new Moments.Read.At(Instant.parse("2026-12-20T00:39:57Z")), new Moments(Shelf2.NOON).read(later));
    }

    @Test
    void listOfReadings_isTakenWhole_eachAtItsTime_andKnownWhenItComesAgain() {
        var body = """
                [{"at":"2027-05-12T11:40:00-05:00","value":99.4},
                 {"at":"2027-05-12T16:50:00.250Z","value":99.6}]""";
        var first = assertInstanceOf(Intake.Outcome.Kept.class, send(body));
        assertEquals(new Taken(2, 0), first.taken());
        assertEquals(
                Readings.of(Instant.parse("2027-05-12T16:40:00Z"), 99.4)
                        .and(Readings.of(Instant.parse("2027-05-12T16:50:00.250Z"), 99.6)),
                kept());
        var again = assertInstanceOf(Intake.Outcome.Kept.class, send(body));
        assertEquals(new Taken(0, 2), again.taken());
        assertEquals(new Tally(2, 2, 0, Optional.empty()), shelf.intake.tally(shelf.added.sensor()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\u0001', textBlock = """
                    warm                                                | NOT_A_NUMBER
                    99,5                                                | NOT_A_NUMBER
                    NaN                                                 | NOT_A_NUMBER
                    1e999                                               | NOT_A_NUMBER
                    99.5 84.2                                           | NOT_A_NUMBER
                    99.5 parsecs                                        | NOT_A_NUMBER
                    {"value":"99.5"}                                    | NOT_A_NUMBER
                    {"value":null}                                      | NOT_A_NUMBER
                    {"value":1e999}                                     | NOT_A_NUMBER
                    37.5 C                                              | OTHER_UNIT
                    47 %                                                | OTHER_UNIT
                    {"value":37.5,"unit":"°C"}                          | OTHER_UNIT
                    {"value":99.5,"unit":"furlong"}                     | OTHER_UNIT
                    {"value":99.5                                       | NOT_JSON
                    {"value":99.5}{"value":99.5}                        | NOT_JSON
                    {"value":99.5,"value":84}                           | NOT_JSON
                    {value:99.5}                                        | NOT_JSON
                    {"at":"2027-05-12T16:50:00Z"}                       | NO_VALUE
                    [99.5]                                              | NO_VALUE
                    {"value":99.5,"time":"2027-05-12T16:50:00Z"}        | UNKNOWN_MEMBER
                    {"value":99.5,"at":"this noon"}                     | NOT_A_TIME
                    {"value":99.5,"at":1747000000}                      | NOT_A_TIME
                    {"value":99.5,"at":"2027-05-12T11:50:00"}           | NO_OFFSET
                    {"value":99.5,"at":"2027-05-12T17:10:01Z"}          | STILL_TO_COME
                    {"value":99.5,"at":"1970-01-01T00:00:07Z"}          | CLOCK_NEVER_SET
                    [{"value":99.5},{"value":99.6}]                     | TIMES_NEEDED
                    []                                                  | EMPTY
                    """)
    void whatIsWrong_isSaid_andNothingIsKept(String body, Kind kind) {
        assertEquals(kind, refused(send(body)));
        assertTrue(kept().isEmpty());
        var tally = shelf.intake.tally(shelf.added.sensor());
        assertEquals(1, tally.refused());
        assertEquals(Shelf2.NOON, tally.last().orElseThrow().at());
    }

    @Test
    void oneWrongReadingOfMany_keepsNone() {
        var body = """
                [{"at":"2027-05-12T16:40:00Z","value":99.4},{"at":"2028-05-12T16:50:00Z","value":99.6}]""";
        assertEquals(Kind.STILL_TO_COME, refused(send(body)));
        assertTrue(kept().isEmpty());
    }

    @Test
    void clockTenMinutesAhead_isBorneWith() {
        assertInstanceOf(Intake.Outcome.Kept.class, send("{\"value\":99.5,\"at\":\"2027-05-12T17:10:00Z\"}"));
    }

    @Test
    void emptyOrForeignBytes_areToldToo() {
        assertEquals(Kind.EMPTY, refused(send("  \n")));
        var bytes = new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1};
        var why = assertInstanceOf(Intake.Outcome.Refused.class, shelf.intake.take(shelf.token(), bytes, Delivery.LIVE))
                .why();
        assertEquals(Kind.NOT_A_NUMBER, why.kind());
        assertTrue(why.about().getFirst().chars().noneMatch(Character::isISOControl), "it can be shown on a page");
    }

    /** A broker keeps the last message for whoever comes later: without its time it may be of last year. */
    @ParameterizedTest
    @CsvSource({"RETAINED, RETAINED", "REPEATED, REPEATED"})
    void oldMessage_isTakenOnlyWithItsTime(Delivery delivery, Kind kind) {
        assertEquals(kind, refused(send("99.5", delivery)));
        assertEquals(kind, refused(send("{\"value\":99.5}", delivery)));
        assertTrue(kept().isEmpty());
        assertInstanceOf(Intake.Outcome.Kept.class, send("{\"value\":99.5,\"at\":\"2027-05-12T16:50:00Z\"}", delivery));
        assertEquals(Readings.of(Instant.parse("2027-05-12T16:50:00Z"), 99.5), kept());
    }

    @Test
    void revokedToken_andUnknownOne_areRefused() {
        assertEquals(Kind.UNKNOWN_TOKEN, refused(shelf.intake.take("none", "99.5".getBytes(UTF_8), Delivery.LIVE)));
        assertEquals(1, shelf.intake.nobodys().refused());
        shelf.sensors.revoke(shelf.added.sensor().id());
        assertEquals(Kind.REVOKED_TOKEN, refused(send("99.5")));
        assertTrue(kept().isEmpty());
    }

    @Test
    void tooMany_areRefused_untilTimeHasPassed_andKeepNobodyElseOut() {
        for (int i = 0; i < 2 * Often.MOST; i++) {
            assertInstanceOf(Intake.Outcome.Kept.class, send("99.5"), "message " + i);
        }
        assertEquals(Kind.TOO_OFTEN, refused(send("99.5")));
        var other = (Sensors.Added.In) shelf.sensors.add(Shelf2.channel(Quantity.HUMIDITY, ReadingUnit.PERCENT));
        assertInstanceOf(
                Intake.Outcome.Kept.class, shelf.intake.take(other.token(), "47".getBytes(UTF_8), Delivery.LIVE));
        shelf.clock.forward(Duration.ofSeconds(2));
        assertInstanceOf(Intake.Outcome.Kept.class, send("99.5"));
    }

    @Test
    void guessing_isSlowedDown_andKeepsNoSensorOut() {
        for (int i = 0; i < 2 * Often.MOST; i++) {
            shelf.intake.take("guess " + i, new byte[0], Delivery.LIVE);
        }
        assertEquals(Kind.TOO_OFTEN, refused(shelf.intake.take("guess", new byte[0], Delivery.LIVE)));
        assertInstanceOf(Intake.Outcome.Kept.class, send("99.5"));
    }

    @Test
    void tooLongAMessage_orTooManyReadings_areRefused() {
        assertEquals(Kind.TOO_LONG, refused(send(" ".repeat(Intake.LONGEST + 1))));
        var one = "{\"value\":99.5,\"at\":\"2027-05-12T16:50:00Z\"},";
        assertEquals(Kind.TOO_MANY_READINGS, refused(send("[" + one.repeat(Tellings.MOST) + one.replace("},", "}]"))));
        assertTrue(kept().isEmpty());
    }

    @Test
    void fullDisk_isToldToTheSensor_whichSendsAgain() {
        shelf.readings.isFull = true;
        assertEquals(Kind.NOT_SAVED, refused(send("{\"value\":99.5,\"at\":\"2027-05-12T16:50:00Z\"}")));
        assertEquals(1, shelf.intake.tally(shelf.added.sensor()).refused());
        shelf.readings.isFull = false;
        assertInstanceOf(Intake.Outcome.Kept.class, send("{\"value\":99.5,\"at\":\"2027-05-12T16:50:00Z\"}"));
        assertEquals(1, kept().count());
    }

    /** 99.5 told by a sensor in °C: kept as it came, since it will not come again, but not believed. */
    @Test
    void readingThatCannotBe_isKept_andSaidToBeHeldBack() {
        var celsius =
                (Sensors.Added.In) shelf.sensors.add(Shelf2.channel(Quantity.AIR_TEMPERATURE, ReadingUnit.CELSIUS));
        var outcome = shelf.intake.take(celsius.token(), "99.5".getBytes(UTF_8), Delivery.LIVE);
        assertEquals(
                OptionalLong.of(1),
                assertInstanceOf(Intake.Outcome.Kept.class, outcome).heldBack());
    }

    @Test
    void jumpOfFortyDegrees_isHeldBack_againstWhatWasReadBefore() {
        send("99.5");
        shelf.clock.forward(Duration.ofMinutes(1));
        assertEquals(
                OptionalLong.of(1),
                assertInstanceOf(Intake.Outcome.Kept.class, send("139.5")).heldBack());
        assertEquals(2, kept().count());
    }

    @Test
    void heldBack_countsOnlyWhatWasTold_andReadsNoHistoryBetween() {
        var history = new ReadingsGathered();
        var start = Shelf2.NOON.minus(Duration.ofDays(30));
        for (int i = 0; i < 10_000; i++) {
            // Every hundredth cannot be: held back, but of no concern to the message.
            history.add(start.plus(Duration.ofMinutes(i)).toEpochMilli(), i % 100 == 0 ? 900 : 99.5);
        }
        shelf.readings.take(Shelf2.CHANNEL, history.take());
        long before = shelf.readings.given;
        var outcome = send("""
                [{"at":"2001-06-01T00:00:00Z","value":99.4},
                 {"at":"%s","value":900.5},
                 {"at":"2027-05-12T16:50:00Z","value":99.6}]""".formatted(start.plus(Duration.ofMinutes(5_000).plusSeconds(30))));
        assertEquals(
                OptionalLong.of(1),
                assertInstanceOf(Intake.Outcome.Kept.class, outcome).heldBack());
        assertTrue(shelf.readings.given - before < 100, "an hour before each reading, not twenty-six years");
    }

    /** RFC 3339, section 5.7: days as the months have them, hours up to 23. 2027 is no leap year, 2024 is. */
    @ParameterizedTest
    @ValueSource(
            strings = {"2027-02-30T06:00:00Z", "2027-02-29T06:00:00Z", "2027-04-31T06:00:00Z", "2027-04-30T24:00:00Z"})
    void dayThatNoCalendarHas_isNoTime(String at) {
        assertEquals(new Moments.Read.Wrong(Kind.NOT_A_TIME), new Moments(Shelf2.NOON).read(at));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2024-02-29T06:00:00-05:00",
                "2024-02-29T06:00:00-0500",
                "2024-02-29T06:00:00-05",
                "2024-02-29t11:00:00z"
            })
    void dayOfALeapYear_isRead_howeverItsOffsetIsWritten(String at) {
        assertEquals(new Moments.Read.At(Instant.parse("2024-02-29T11:00:00Z")), new Moments(Shelf2.NOON).read(at));
    }

    @Test
    void whatIsKept_isNotRefused_becauseItCannotBeReadAgain() {
        shelf.readings.isUnreadable = true;
        var kept = assertInstanceOf(Intake.Outcome.Kept.class, send("99.5"));
        assertEquals(OptionalLong.empty(), kept.heldBack());
        shelf.readings.isUnreadable = false;
        assertEquals(1, kept().count());
        assertEquals(new Tally(1, 0, 0, Optional.empty()), shelf.intake.tally(shelf.added.sensor()));
    }

    /** Line and column as an editor shows them, from 1, of the message as it was sent. */
    @Test
    void jsonThatCannotBeRead_isSaidWithLineAndColumn() {
        var body = "\n[{\"value\":99.5,\n  value:99.6}]";
        var why = assertInstanceOf(Intake.Outcome.Refused.class, send(body)).why();
        assertEquals(Kind.NOT_JSON, why.kind());
        assertEquals("3", why.about().getFirst(), why.toString());
        assertTrue(
                Integer.parseInt(why.about().get(1)) >= 3
                        && Integer.parseInt(why.about().get(1)) <= 4,
                why.toString());
    }
}
