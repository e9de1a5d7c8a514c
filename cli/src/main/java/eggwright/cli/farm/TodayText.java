package eggwright.cli.farm;

import eggwright.book.picture.FarmClock;
import eggwright.book.picture.Picture;
import eggwright.today.DaySheet;
import eggwright.today.eggroom.EggRoomSheet;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Instant;
import java.time.ZoneId;

/** The day sheet as it is read in a terminal. */
final class TodayText {
    private TodayText() {}

    /** The sheet of a picture. */
    static DaySheet sheet(Picture picture, Instant now) {
        return DaySheet.of(picture, now.atZone(zone(clock(picture))));
    }

    static FarmClock clock(Picture picture) {
        return picture.farm().habits().clock();
    }

    /** A farm that has noted no zone lives by this machine's. */
    static ZoneId zone(FarmClock clock) {
        return clock.zoneOr(ZoneId.systemDefault());
    }

    static String of(Picture picture, DaySheet sheet) {
        var text = new StringWriter();
        try (var out = new PrintWriter(text)) {
            TodayLines.write(out, sheet, EggRoomSheet.of(picture, sheet.now()));
        }
        return text.toString();
    }
}
