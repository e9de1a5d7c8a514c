package eggwright.cli.farm;

import eggwright.book.picture.Picture;
import eggwright.cli.answer.JsonAnswers;
import eggwright.today.DaySheet;
import eggwright.today.eggroom.EggRoomSheet;
import java.io.StringWriter;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/**
 * The day sheet as it reads from one moment until another, if nothing is noted.
 *
 * @param text for people
 * @param afterItsHour the answer for other programs without its beginning, the hour
 */
record TodayReading(Instant from, Instant until, String text, String afterItsHour) {
    /** What is kept is read at each start: more than this of a large farm's days would take longer than it spares. */
    private static final int ENOUGH_CHARACTERS = 4 << 20;

    /** Every reading from a moment on, one after the other, for so long. */
    static List<TodayReading> of(Picture picture, Instant from, Duration ahead) {
        var end = from.plus(ahead);
        var readings = new ArrayList<TodayReading>();
        int characters = 0;
        for (var at = from;
                at.isBefore(end) && characters < ENOUGH_CHARACTERS;
                at = readings.getLast().until()) {
            var sheet = TodayText.sheet(picture, at);
            var json = json(picture, sheet);
            var reading = new TodayReading(
                    at,
                    sheet.readsTheSameUntil().toInstant(),
                    TodayText.of(picture, sheet),
                    json.substring(itsHour(at, sheet.now().getZone()).length()));
            readings.add(reading);
            characters += reading.text.length() + reading.afterItsHour.length();
        }
        return readings;
    }

    static String json(Picture picture, DaySheet sheet) {
        var json = new StringWriter();
        new JsonAnswers(json).write(TodayAnswer.of(sheet, EggRoomSheet.of(picture, sheet.now())));
        return json.toString();
    }

    /** How the answer for other programs begins. */
    static String itsHour(Instant now, ZoneId zone) {
        return "{\"now\":\"" + TodayAnswer.hour(now.atZone(zone)) + "\"";
    }
}
