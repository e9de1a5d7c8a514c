package eggwright.desk.lamp;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a phone takes into the dark room. Keys of the JSON follow the names here; the page's scripts read them.
 *
 * @param farm whose book this is
 * @param device the name under which the phone notes
 * @param now by the desk's clock
 * @param limit how long a tray may be out of the heat
 * @param others who has which tray, as far as the desk has heard
 */
record RoundTold(String farm, String device, Instant now, Limit limit, List<Tray> trays, List<Holding.Held> others) {
    /**
     * @param minutes out of the heat
     * @param source where that comes from, in words
     */
    record Limit(int minutes, String source) {}

    /**
     * @param speciesName in the language of the page
     * @param period days from set to hatch
     * @param eggs absent where the book cannot say
     * @param judging between which days the lamp can be trusted
     * @param doubtful places at which the last look had doubtful eggs
     * @param rows eggs in each row of the tray; empty where trays are not told by place
     * @param second the second look that the desk asked for and that is still wanted; absent where none is
     */
    record Tray(
            String set,
            String tray,
            String species,
            String speciesName,
            double period,
            @Nullable String machine,
            @Nullable String section,
            @Nullable String position,
            LocalDate dayZero,
            int day,
            @Nullable Integer eggs,
            List<Pen> pens,
            List<Look> looks,
            Judged judging,
            List<Integer> doubtful,
            List<Integer> rows,
            @Nullable Second second) {}

    /**
     * @param eggs absent where only their sum with another pen's is known
     * @param mark on the shell; absent where there is none
     * @param places in the tray; empty where not recorded
     */
    record Pen(String pen, @Nullable Integer eggs, @Nullable String mark, List<Integer> places) {}

    /**
     * @param askedOf absent where anybody will do who did not look first
     * @param first who looked first, each on the device that noted it; empty where nobody has looked
     */
    record Second(@Nullable String askedOf, List<First> first) {}

    record First(String who, String device) {}

    record Look(int firstDay, int day, int lastDay) {}

    record Judged(int from, int darkFrom, int until) {}
}
