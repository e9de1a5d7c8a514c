package eggwright.cli.farm;

import eggwright.book.picture.Picture;
import eggwright.today.DaySheet;
import eggwright.today.eggroom.EggRoomSheet;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** The day sheet as it is read in a terminal. */
final class TodayText {
    private TodayText() {}

    /** The sheet of a picture; a farm that has noted no zone lives by this machine's. */
    static DaySheet sheet(Picture picture, Instant now) {
        return DaySheet.of(
                picture, now.atZone(hasZone(picture) ? picture.farm().habits().zone() : ZoneId.systemDefault()));
    }

    /** Whether the farm has said by which clock it lives. */
    static boolean hasZone(Picture picture) {
        var noted = picture.farm().habits().zone();
        return !noted.equals(ZoneId.of("UTC")) && !noted.equals(ZoneOffset.UTC);
    }

    static String of(Picture picture, DaySheet sheet) {
        var text = new StringWriter();
        try (var out = new PrintWriter(text)) {
            TodayLines.write(out, sheet, EggRoomSheet.of(picture, sheet.now()));
        }
        return text.toString();
    }
}
