package eggwright.sheet.season;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.EggsSet;
import eggwright.book.entry.Entry;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Remarked;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.TransferOf;
import eggwright.book.entry.Transferred;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumMap;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Reads imported entries back as the row that they came from, to show both versions of a row, column by column. */
final class RowOfEntries {
    private final EnumMap<SeasonColumn, LocalDate> dates = new EnumMap<>(SeasonColumn.class);
    private final EnumMap<SeasonColumn, Integer> counts = new EnumMap<>(SeasonColumn.class);
    private @Nullable EggsSet in;

    private RowOfEntries() {}

    static SeasonRow of(SetName set, TrayName tray, Species species, Collection<Entry> entries) {
        var row = new RowOfEntries();
        entries.forEach(row::take);
        var load = row.in == null ? null : row.in.loads().getFirst();
        var lot = load == null ? null : load.lots().getFirst();
        return new SeasonRow(
                0,
                set,
                tray,
                lot == null ? species : lot.species(),
                lot == null ? null : lot.pen(),
                load == null ? null : load.machine(),
                load == null ? null : load.section(),
                row.dates,
                row.counts);
    }

    private void take(Entry entry) {
        var on = entry.happened().toLocalDate();
        switch (entry.payload()) {
            case EggsSet it -> set(it, on);
            case Looked it -> {
                dates.put(SeasonColumn.CANDLED_ON, on);
                for (var column : SeasonColumn.LAMP) {
                    var finding = RowEntries.finding(column);
                    it.findings().stream()
                            .filter(f -> f.finding() == finding)
                            .forEach(f -> counts.put(column, f.seen()));
                }
            }
            case Transferred it -> {
                dates.put(SeasonColumn.TRANSFERRED_ON, on);
                var counted = it.eggs().stream()
                        .map(TransferOf::eggs)
                        .filter(Objects::nonNull)
                        .mapToInt(Integer::intValue);
                counted.findFirst().ifPresent(eggs -> counts.put(SeasonColumn.TRANSFERRED, eggs));
            }
            case TakenOff it -> {
                dates.put(SeasonColumn.HATCHED_ON, on);
                counts.put(SeasonColumn.SALEABLE, it.saleable());
                counts.put(SeasonColumn.CULLED, it.culled());
                counts.put(SeasonColumn.DEAD_IN_BASKET, it.deadInBasket());
            }
            case BrokenOut it -> opened(it);
            case Remarked it -> remark(it.text());
            default -> {
                // No row gives another kind.
            }
        }
    }

    private void set(EggsSet it, LocalDate on) {
        in = it;
        dates.put(SeasonColumn.SET_ON, on);
        counts.put(SeasonColumn.EGGS, it.eggs());
        var lot = it.loads().getFirst().lots().getFirst();
        if (lot.laidFrom() != null) {
            dates.put(SeasonColumn.LAID_FROM, lot.laidFrom());
        }
        if (lot.laidTo() != null) {
            dates.put(SeasonColumn.LAID_TO, lot.laidTo());
        }
    }

    private void opened(BrokenOut it) {
        counts.put(SeasonColumn.OPENED, it.opened());
        if (it.clearsOpened() != null) {
            counts.put(SeasonColumn.CLEARS_OPENED, it.clearsOpened());
        }
        for (var named : it.classes()) {
            SeasonColumn.ofWord(named.what().word()).ifPresent(column -> counts.put(column, named.eggs()));
        }
    }

    private void remark(String text) {
        if (text.startsWith(RowEntries.COUNTED_AT_TRANSFER)) {
            var digits = text.substring(RowEntries.COUNTED_AT_TRANSFER.length()).replaceAll("[^0-9]", "");
            if (CellText.count(digits) instanceof CellText.Value<Integer> it) {
                counts.put(SeasonColumn.TRANSFERRED, it.value());
            }
        }
    }
}
