package eggwright.book.diary;

import static eggwright.book.diary.Diary.*;

import eggwright.book.entry.*;
import eggwright.book.name.*;
import eggwright.trade.BreakOutClass;
import eggwright.trade.Species;
import eggwright.units.Mass;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * A season in which everything goes wrong that can: wrong trays, too many eggs, counts at every grain one after the
 * other, trays pooled across sets, baskets used again, phones abroad, notes days late, mends of mends, of nothing and of
 * each other. The same seed gives the same season.
 */
public final class SeasonOfSlips {
    private static final int WEEKS = 5;
    private static final int NOTES_A_WEEK = 16;
    private static final int TRAYS = 4;

    private final Random random;
    private final Diary diary = new Diary();
    private final List<EntryId> noted = new ArrayList<>();

    private SeasonOfSlips(long seed) {
        this.random = new Random(seed);
    }

    /** The notes in the order in which they happened. */
    public static Diary of(long seed) {
        var season = new SeasonOfSlips(seed);
        for (int week = 0; week < WEEKS; week++) {
            season.week(week);
        }
        return season.diary;
    }

    private void week(int week) {
        var set = Integer.toString(week);
        var monday = MONDAY.plusWeeks(week);
        diary.note(monday, setting(set, load(1, lot("A", 20 + random.nextInt(30))), mixed(2), marked(3)));
        for (int n = 0; n < NOTES_A_WEEK; n++) {
            var at = abroadAtTimes(monday.plusDays(random.nextInt(28) - 1).plusHours(random.nextInt(14)));
            var id = diary.note(at, anything(set, week, at), at.plusDays(daysWithoutSignal()));
            noted.add(id);
            if (random.nextInt(5) == 0) {
                mend(set, at);
            }
        }
    }

    private int daysWithoutSignal() {
        return random.nextInt(4) == 0 ? random.nextInt(9) : 0;
    }

    private LoadSet mixed(int tray) {
        return load(tray, lot("B", 10 + random.nextInt(30)), lot("A", 5));
    }

    private LoadSet marked(int tray) {
        var dotted = new Lot(pen("B"), Species.PHEASANT, null, null, 1 + random.nextInt(15), "blue dot", List.of());
        return load(tray, lot("C", 40), dotted);
    }

    private OffsetDateTime abroadAtTimes(OffsetDateTime at) {
        return random.nextInt(6) == 0 ? at.withOffsetSameInstant(ZoneOffset.ofHours(random.nextInt(20) - 10)) : at;
    }

    private Payload anything(String set, int week, OffsetDateTime at) {
        int tray = 1 + random.nextInt(TRAYS + 1);
        return switch (random.nextInt(16)) {
            case 0, 1, 2 -> look(set);
            case 3 -> pool(set, 1 + random.nextInt(2), 3 + random.nextInt(2), few(30));
            case 4, 5 -> transfer(set, tray);
            case 6, 7, 8 -> takenOff(set);
            case 9, 10, 11 -> brokenOut(set);
            case 12 ->
                new EggsMoved(
                        set(set),
                        tray(1 + random.nextInt(TRAYS)),
                        random.nextInt(3) == 0 ? pen("B") : null,
                        few(9),
                        set(Integer.toString(Math.max(0, week - 1))),
                        tray(5),
                        null,
                        null);
            case 13 -> ofTheEggRoom(at.toLocalDate());
            case 14 ->
                random.nextBoolean()
                        ? new LoadPlaced(set(set), tray(tray), new MachineName("Setter 2"), null, null)
                        : new Weighed(set(set), tray(tray), WeighedWhat.WHOLE_TRAY, Mass.parse("1500g"), null, 40);
            default -> ofTheFarm();
        };
    }

    /** Half of the time nobody counted. */
    private @Nullable Integer few(int most) {
        return random.nextBoolean() ? null : random.nextInt(most);
    }

    private Scope scope(String set) {
        int tray = 1 + random.nextInt(TRAYS);
        var pen = pen(random.nextBoolean() ? "A" : "B");
        return switch (random.nextInt(6)) {
            case 0 -> Scope.ofPen(set(set), pen);
            case 1 -> tray(set, tray).withPen(pen);
            case 2 -> basket("basket " + random.nextInt(3));
            case 3 -> Scope.ofSet(set(set));
            default -> tray(set, tray);
        };
    }

    private Looked look(String set) {
        return new Looked(
                scope(set),
                few(40),
                few(60),
                List.of(
                        new FindingCount(Finding.CLEAR, 5, random.nextInt(4), random.nextInt(2)),
                        FindingCount.removed(Finding.DEAD, random.nextInt(4)),
                        FindingCount.left(Finding.DOUBTFUL, random.nextInt(4)),
                        FindingCount.removed(Finding.CRACKED, random.nextInt(2))),
                random.nextInt(2),
                null);
    }

    private Transferred transfer(String set, int tray) {
        var parts = new ArrayList<TransferOf>();
        for (int n = 0; n <= random.nextInt(4); n++) {
            var basket = random.nextInt(3) == 0 ? null : new BasketName("basket " + random.nextInt(3));
            parts.add(new TransferOf(set(set), tray(1 + (tray + n / 2) % TRAYS), few(40), basket));
        }
        return new Transferred(random.nextBoolean() ? new MachineName("Hatcher") : null, parts);
    }

    private TakenOff takenOff(String set) {
        return new TakenOff(
                scope(set),
                random.nextBoolean() ? Pull.LAST : Pull.MORE_TO_COME,
                random.nextInt(40),
                random.nextInt(3),
                random.nextInt(2),
                random.nextInt(2));
    }

    private BrokenOut brokenOut(String set) {
        var scope = scope(set);
        var evening = scope.set() == null || noted.isEmpty() || random.nextInt(4) != 0
                ? scope
                : scope.withLook(noted.get(random.nextInt(noted.size())));
        int late = random.nextInt(5);
        return open(
                evening,
                4 + late + random.nextInt(2),
                random.nextBoolean() ? null : random.nextInt(4),
                as(BreakOutClass.INFERTILE, 3),
                as(BreakOutClass.EARLY_DEAD, 1),
                as(BreakOutClass.LATE_DEAD, late));
    }

    private Payload ofTheEggRoom(LocalDate on) {
        var pen = pen("A");
        int eggs = random.nextInt(40);
        return switch (random.nextInt(6)) {
            case 0 ->
                new EggsReceived(pen("Bought"), Species.PHEASANT, null, null, eggs, ReceivedFor.BOUGHT_IN, "Harrow");
            case 1 -> new EggsSold(pen, Species.PHEASANT, null, null, null, eggs);
            case 2 -> new EggsEaten(pen, Species.PHEASANT, null, null, eggs);
            case 3 -> new EggsCounted(pen, Species.PHEASANT, eggs);
            default ->
                new EggsGathered(pen, Species.PHEASANT, on, on, eggs, List.of(new Rejected(RejectReason.CRACKED, 1)));
        };
    }

    private Payload ofTheFarm() {
        var order = new OrderNumber(Integer.toString(random.nextInt(3)));
        var buyer = new BuyerNumber("7");
        return switch (random.nextInt(7)) {
            case 0 -> new PenChanged(pen("A"), PenChange.DIED, 1, random.nextInt(3), "");
            case 1 -> new PenOpened(pen("A"), Species.PHEASANT, 2, 12, "");
            case 2 -> new ChicksOrdered(order, buyer, Species.PHEASANT, 50, MONDAY.toLocalDate(), "");
            case 3 -> new ChicksDelivered(order, buyer, Species.PHEASANT, 20, 1);
            case 4 ->
                new HabitsNoted(
                        null, random.nextBoolean() ? "America/Chicago" : "Europe/London", null, null, null, null, null);
            case 5 -> new Remarked(null, "Fox seen");
            default -> new ChicksDied(null, Species.PHEASANT, 3, "Brooder 1", "chilled");
        };
    }

    /** Of an entry, of a mend, of an entry that never comes, or of a mend that mends it. */
    private void mend(String set, OffsetDateTime at) {
        var target = random.nextInt(8) == 0 ? diary.nextId(at) : noted.get(random.nextInt(noted.size()));
        var saw = random.nextInt(3) == 0 ? noted.get(random.nextInt(noted.size())) : target;
        var later = at.plusDays(2);
        if (random.nextInt(6) == 0) {
            var one = diary.nextId(later);
            var other = diary.nextId(later);
            diary.note(one, later, new Withdrawn(other, other, "slip"), later);
            diary.note(other, later, new Withdrawn(one, one, "slip"), later);
            return;
        }
        noted.add(diary.note(
                later,
                random.nextBoolean()
                        ? new Withdrawn(target, saw, "slip")
                        : new Replaced(target, saw, random.nextBoolean() ? at.plusHours(3) : null, instead(set, at))));
    }

    private Payload instead(String set, OffsetDateTime at) {
        return random.nextInt(3) == 0
                ? anything(set, 1, at)
                : Diary.look(set, 1 + random.nextInt(3), FindingCount.removed(Finding.ROT, 1));
    }
}
