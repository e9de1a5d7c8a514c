package eggwright.rates;

import eggwright.book.entry.*;
import eggwright.book.fold.Ledger;
import eggwright.book.name.*;
import eggwright.book.picture.Picture;
import eggwright.trade.BreakOutClass;
import eggwright.trade.Species;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Writes entries of an invented farm for tests, in words that a keeper would use. */
final class Diary {
    static final FarmId FARM = new FarmId("Fallow End");
    static final OffsetDateTime MONDAY = OffsetDateTime.of(2027, 4, 5, 8, 0, 0, 0, ZoneOffset.ofHours(-5));

    private final List<Kept> entries = new ArrayList<>();
    private int made;

    List<Kept> entries() {
        return List.copyOf(entries);
    }

    Picture picture() {
        return ledger().picture();
    }

    RateReport report(Dimension by) {
        return RateReport.of(picture(), by);
    }

    Ledger ledger() {
        return Ledger.of(entries);
    }

    EntryId note(OffsetDateTime at, Payload payload) {
        return note(at, payload, at);
    }

    EntryId note(OffsetDateTime at, Payload payload, OffsetDateTime received) {
        return note("Wren", at, payload, received);
    }

    EntryId noteBy(String who, OffsetDateTime at, Payload payload) {
        return note(who, at, payload, at);
    }

    private EntryId note(String who, OffsetDateTime at, Payload payload, OffsetDateTime received) {
        var id = EntryId.of(at.toInstant().toEpochMilli(), 0, ++made);
        entries.add(new Kept(
                new Entry(id, FARM, at, at, new PersonName(who), new DeviceName("desk"), Origin.NOTED, payload, 1),
                received.toInstant(),
                Duration.ZERO));
        return id;
    }

    static OffsetDateTime day(int n) {
        return MONDAY.plusDays(n).plusHours(11);
    }

    static SetName set(String name) {
        return new SetName(name);
    }

    static TrayName tray(int number) {
        return new TrayName(Integer.toString(number));
    }

    static PenName pen(String name) {
        return new PenName(name);
    }

    static Lot lot(String pen, int eggs) {
        return Lot.of(new PenName(pen), Species.PHEASANT, LocalDate.of(2027, 3, 29), LocalDate.of(2027, 4, 4), eggs);
    }

    static LoadSet load(int tray, Lot... lots) {
        return new LoadSet(tray(tray), new MachineName("Setter 1"), new SectionName("2"), null, List.of(lots));
    }

    static EggsSet setting(String set, LoadSet... loads) {
        return new EggsSet(set(set), List.of(loads));
    }

    static Looked look(String set, int tray, FindingCount... findings) {
        return new Looked(Scope.ofLoad(set(set), tray(tray)), null, null, List.of(findings), 0, null);
    }

    static EggsMoved pool(String set, int from, int to, @Nullable Integer eggs) {
        return new EggsMoved(set(set), tray(from), null, eggs, set(set), tray(to), null, null);
    }

    static Transferred transfer(String set, int... trays) {
        var parts = new ArrayList<TransferOf>();
        for (int tray : trays) {
            parts.add(new TransferOf(set(set), tray(tray), null, null));
        }
        return new Transferred(new MachineName("Hatcher"), parts);
    }

    static TakenOff pull(Scope scope, Pull pull, int saleable) {
        return new TakenOff(scope, pull, saleable, 0, 0, 0);
    }

    static BrokenOut open(Scope scope, int opened, @Nullable Integer clears, ClassCount... classes) {
        return new BrokenOut(scope, opened, clears, List.of(classes));
    }

    static ClassCount as(BreakOutClass what, int eggs) {
        return new ClassCount(what, eggs);
    }
}
