package eggwright.sheet.season;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.ClassCount;
import eggwright.book.entry.EggsSet;
import eggwright.book.entry.Entry;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.LoadSet;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Lot;
import eggwright.book.entry.Origin;
import eggwright.book.entry.Payload;
import eggwright.book.entry.Pull;
import eggwright.book.entry.Remarked;
import eggwright.book.entry.Scope;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.TransferOf;
import eggwright.book.entry.Transferred;
import eggwright.book.name.DeviceName;
import eggwright.trade.BreakOutClass;
import eggwright.wire.DerivedIds;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The entries that one row says. Hours are fixed, so that equal dates keep the order of the work; counts of a whole set
 * come half an hour after those of its trays.
 */
final class RowEntries {
    static final LocalTime SET_AT = LocalTime.of(8, 0);
    static final LocalTime LOOK_AT = LocalTime.of(10, 0);
    static final LocalTime TRANSFER_AT = LocalTime.of(11, 0);
    static final LocalTime TAKE_OFF_AT = LocalTime.of(12, 0);
    static final LocalTime BREAK_OUT_AT = LocalTime.of(13, 0);
    static final String COUNTED_AT_TRANSFER = "Counted at the transfer of the whole set: ";

    private static final int WHOLE_SET_LATER_MINUTES = 30;
    private static final DeviceName IMPORT = new DeviceName("import");
    private static final int VERSION = 1;

    private final Importing into;

    RowEntries(Importing into) {
        this.into = into;
    }

    /**
     * The entries of a load: it goes in, and what became of it.
     *
     * @param openedOn when eggs were opened, if any were
     */
    List<Entry> ofLoad(SeasonRow row, LocalDate openedOn) {
        var entries = new ArrayList<Entry>();
        var lot = Lot.of(
                row.pen(), row.species(), row.date(SeasonColumn.LAID_FROM), row.date(SeasonColumn.LAID_TO), row.eggs());
        var load = new LoadSet(row.tray(), row.machine(), row.section(), null, List.of(lot));
        entries.add(entry(row, row.setOn(), SET_AT, new EggsSet(row.set(), List.of(load))));
        var scope = Scope.ofLoad(row.set(), row.tray());
        int removed = row.sum(SeasonColumn.REMOVED);
        addLook(entries, row, scope, LOOK_AT, row.eggs() - removed);
        var transferred = row.date(SeasonColumn.TRANSFERRED_ON);
        if (transferred != null) {
            var part = new TransferOf(row.set(), row.tray(), row.count(SeasonColumn.TRANSFERRED), null);
            entries.add(entry(row, transferred, TRANSFER_AT, new Transferred(null, List.of(part))));
        }
        addTakeOff(entries, row, scope, TAKE_OFF_AT);
        addBreakOut(entries, row, scope, BREAK_OUT_AT, openedOn);
        return entries;
    }

    /**
     * The entries of counts taken for a whole set. They speak of the set and are never split.
     *
     * @param rows all rows of the set
     * @param openedOn when eggs were opened, if any were
     */
    List<Entry> ofWholeSet(SeasonRow row, SetRows rows, LocalDate openedOn) {
        int leftInAll = rows.eggs() - rows.added(row).sum(SeasonColumn.REMOVED);
        var entries = new ArrayList<Entry>();
        var scope = Scope.ofSet(row.set());
        addLook(entries, row, scope, later(LOOK_AT), leftInAll);
        var transferred = row.date(SeasonColumn.TRANSFERRED_ON);
        if (transferred != null) {
            var parts = rows.trayNames().stream()
                    .map(tray -> new TransferOf(row.set(), tray, null, null))
                    .toList();
            entries.add(entry(row, transferred, later(TRANSFER_AT), new Transferred(null, parts)));
            var counted = row.count(SeasonColumn.TRANSFERRED);
            if (counted != null && counted != leftInAll) {
                // A transfer names trays, and the count is of none of them: a remark keeps it.
                var text = COUNTED_AT_TRANSFER + counted + " eggs.";
                entries.add(entry(row, transferred, later(TRANSFER_AT), new Remarked(scope, text)));
            }
        }
        addTakeOff(entries, row, scope, later(TAKE_OFF_AT));
        addBreakOut(entries, row, scope, later(BREAK_OUT_AT), openedOn);
        return entries;
    }

    private static LocalTime later(LocalTime time) {
        return time.plusMinutes(WHOLE_SET_LATER_MINUTES);
    }

    private void addLook(List<Entry> entries, SeasonRow row, Scope scope, LocalTime at, int left) {
        var candled = row.date(SeasonColumn.CANDLED_ON);
        if (candled == null) {
            return;
        }
        var findings = new ArrayList<FindingCount>();
        for (var column : SeasonColumn.LAMP) {
            var count = row.count(column);
            if (count != null) {
                findings.add(
                        column == SeasonColumn.DOUBTFUL
                                ? FindingCount.left(Finding.DOUBTFUL, Math.min(count, left))
                                : FindingCount.removed(finding(column), count));
            }
        }
        entries.add(entry(row, candled, at, new Looked(scope, null, null, findings, 0, null)));
    }

    static Finding finding(SeasonColumn column) {
        return switch (column) {
            case CLEAR -> Finding.CLEAR;
            case BLOOD_RING -> Finding.BLOOD_RING;
            case DEAD -> Finding.DEAD;
            case CRACKED -> Finding.CRACKED;
            case ROT -> Finding.ROT;
            case DOUBTFUL -> Finding.DOUBTFUL;
            default -> throw new IllegalArgumentException(column.word() + " is not seen at the lamp");
        };
    }

    private void addTakeOff(List<Entry> entries, SeasonRow row, Scope scope, LocalTime at) {
        var hatched = row.date(SeasonColumn.HATCHED_ON);
        if (hatched != null) {
            var takenOff = new TakenOff(
                    scope,
                    Pull.LAST,
                    row.n(SeasonColumn.SALEABLE),
                    row.n(SeasonColumn.CULLED),
                    row.n(SeasonColumn.DEAD_IN_BASKET),
                    0);
            entries.add(entry(row, hatched, at, takenOff));
        }
    }

    private void addBreakOut(List<Entry> entries, SeasonRow row, Scope scope, LocalTime at, LocalDate on) {
        if (row.opened() == 0) {
            return;
        }
        var classes = new ArrayList<ClassCount>();
        for (var what : BreakOutClass.values()) {
            var count = SeasonColumn.ofWord(what.word()).map(row::count).orElse(null);
            if (count != null) {
                classes.add(new ClassCount(what, count));
            }
        }
        var payload = new BrokenOut(scope, row.opened(), row.count(SeasonColumn.CLEARS_OPENED), classes);
        entries.add(entry(row, on, at, payload));
    }

    private Entry entry(SeasonRow row, LocalDate date, LocalTime time, Payload payload) {
        return new Entry(
                DerivedIds.of(into.farm(), row.set(), row.tray(), payload),
                into.farm(),
                date.atTime(time).atZone(into.zone()).toOffsetDateTime(),
                into.noted(),
                into.who(),
                IMPORT,
                Origin.IMPORTED,
                payload,
                VERSION);
    }
}
