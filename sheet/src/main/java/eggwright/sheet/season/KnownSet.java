package eggwright.sheet.season;

import eggwright.book.entry.EggsSet;
import eggwright.book.entry.Entry;
import eggwright.book.entry.LoadSet;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What the book holds of one set already. */
final class KnownSet {
    private final SetName set;
    /** Entries of each row that was imported; those of the whole set stand under {@link SeasonRow#ALL}. */
    private final NavigableMap<TrayName, List<Entry>> rows = new TreeMap<>();
    /** Settings that a person noted. */
    private final List<Entry> noted = new ArrayList<>();

    KnownSet(SetName set) {
        this.set = set;
    }

    void add(TrayName tray, Entry entry) {
        rows.computeIfAbsent(tray, t -> new ArrayList<>()).add(entry);
    }

    void addNoted(Entry entry) {
        noted.add(entry);
    }

    boolean wasNoted() {
        return !noted.isEmpty();
    }

    boolean isEmpty() {
        return rows.isEmpty() && noted.isEmpty();
    }

    List<Entry> entries(TrayName tray) {
        return rows.getOrDefault(tray, List.of());
    }

    /** Whether the whole set is its only load. */
    boolean isOneLoad() {
        return settings().anyMatch(e -> tray(e).equals(SeasonRow.ALL));
    }

    /** Whether anything was counted for the whole of it, beside its trays. */
    boolean hasCountsOfTheWhole() {
        return rows.containsKey(SeasonRow.ALL) && !isOneLoad();
    }

    /** Its trays, where it has any. */
    List<TrayName> trays() {
        return settings()
                .map(KnownSet::tray)
                .filter(t -> !t.equals(SeasonRow.ALL))
                .sorted()
                .toList();
    }

    /** The imported row of a tray, as it would stand in a file. */
    SeasonRow row(TrayName tray, eggwright.trade.Species species) {
        return RowOfEntries.of(set, tray, species, entries(tray));
    }

    LocalDate setOn() {
        return java.util.stream.Stream.concat(settings(), noted.stream())
                .findFirst()
                .orElseThrow()
                .happened()
                .toLocalDate();
    }

    /** For example: {@code set on 2027-04-05, trays 1, 2: 108 eggs}. */
    String words() {
        var all = java.util.stream.Stream.concat(settings(), noted.stream()).toList();
        var loads = all.stream()
                .flatMap(e -> ((EggsSet) e.payload()).loads().stream())
                .toList();
        return words(
                setOn(),
                loads.stream().map(LoadSet::tray).toList(),
                loads.stream().mapToInt(LoadSet::eggs).sum());
    }

    static String words(LocalDate setOn, List<TrayName> trays, int eggs) {
        return "set on " + setOn + ", tray" + (trays.size() == 1 ? " " : "s ")
                + trays.stream().sorted().map(TrayName::text).collect(Collectors.joining(", ")) + ": " + eggs
                + " eggs";
    }

    private java.util.stream.Stream<Entry> settings() {
        return rows.values().stream().flatMap(List::stream).filter(e -> e.payload() instanceof EggsSet);
    }

    private static TrayName tray(Entry setting) {
        return ((EggsSet) setting.payload()).loads().getFirst().tray();
    }
}
