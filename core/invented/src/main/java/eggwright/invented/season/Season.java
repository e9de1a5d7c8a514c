package eggwright.invented.season;

import eggwright.invented.answer.Answers;
import eggwright.invented.chance.Streams;
import eggwright.invented.truth.Truth;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;

/**
 * Lets a season happen. The same truth, seed and first day give the same season; each purpose draws from a stream of its
 * own, so that a change in one part of the truth leaves the chances of the others as they were.
 */
public final class Season {
    private Season() {}

    /**
     * The whole season.
     *
     * @param from the day of the first egg; its year names the sets
     */
    public static InventedSeason of(Truth truth, long seed, LocalDate from) {
        var farm = new Farm(truth, new Streams(seed), from);
        var setDays = setDays(truth, from);
        new Setup(farm).note();
        var room = new EggRoom(farm);
        var trays = new TrayShelf(farm);
        var filling = new Filling(farm, room, trays, new EggDraws(farm));
        var batches = new ArrayList<Batch>();
        var last = setDays.getLast();
        for (var day = from; !day.isAfter(last); day = day.plusDays(1)) {
            int number = setDays.indexOf(day) + 1;
            if (number > 0) {
                room.discardOld(day.minusDays(1));
                batches.addAll(filling.fill(number, day));
            } else if (setDays.contains(day.minusDays(1))) {
                room.clearSome(day);
            }
            if (day.isBefore(last)) {
                room.gather(day);
            }
        }
        room.empty(last.plusDays(1));
        raise(farm, batches);
        var chicks = new Chicks(farm, batches);
        chicks.note();
        new Rounds(farm).note(setDays.getFirst().minusDays(1), last.plusDays(26));
        var planted = new Planting(farm).plant(batches);
        return new InventedSeason(
                truth,
                seed,
                from,
                farm.notebook.entries(),
                new Answers(batches.stream().map(Batch::answer).toList(), planted));
    }

    private static void raise(Farm farm, List<Batch> batches) {
        var evening = new LampEvening(farm);
        var hatching = new Hatching(farm);
        for (var batch : batches) {
            evening.work(batch);
            hatching.work(batch);
        }
    }

    private static List<LocalDate> setDays(Truth truth, LocalDate from) {
        var season = truth.season();
        var first = from.plusDays(season.firstSetDay()).with(TemporalAdjusters.nextOrSame(season.setWeekday()));
        var days = new ArrayList<LocalDate>();
        for (int i = 0; i < season.sets(); i++) {
            days.add(first.plusWeeks(i));
        }
        return days;
    }
}
