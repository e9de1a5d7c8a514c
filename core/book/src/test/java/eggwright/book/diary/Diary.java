package eggwright.book.diary;

import eggwright.book.entry.*;
import eggwright.book.fold.Ledger;
import eggwright.book.name.*;
import eggwright.book.picture.LoadPicture;
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

/** Writes entries of an invented farm for tests, in words that a keeper would use. Lent to the rooms that read the picture. */
public final class Diary {
    public static final FarmId FARM = new FarmId("Fallow End");
    public static final OffsetDateTime MONDAY = OffsetDateTime.of(2027, 4, 5, 8, 0, 0, 0, ZoneOffset.ofHours(-5));

    private final List<Kept> entries = new ArrayList<>();
    private int made;

    public List<Kept> entries() {
        return List.copyOf(entries);
    }

    public Picture picture() {
        return ledger().picture();
    }

    /** One load as the book has it now. */
    public LoadPicture load(String set, int tray) {
        return picture().set(set(set)).orElseThrow().load(tray(tray)).orElseThrow();
    }

    public Ledger ledger() {
        return Ledger.of(entries);
    }

    public EntryId note(OffsetDateTime at, Payload payload) {
        return note(at, payload, at);
    }

    /** Noted at one time, received at another: from a phone that was without signal. */
    public EntryId note(OffsetDateTime at, Payload payload, OffsetDateTime received) {
        var id = nextId(at);
        note(id, at, payload, received);
        return id;
    }

    /** As another person noted it. */
    public EntryId noteBy(String who, OffsetDateTime at, Payload payload) {
        var id = nextId(at);
        note(id, new PersonName(who), at, payload, at);
        return id;
    }

    /** With an id that other notes may have named before. */
    public void note(EntryId id, OffsetDateTime at, Payload payload, OffsetDateTime received) {
        note(id, new PersonName("Wren"), at, payload, received);
    }

    private void note(EntryId id, PersonName who, OffsetDateTime at, Payload payload, OffsetDateTime received) {
        entries.add(new Kept(
                new Entry(id, FARM, at, at, who, new DeviceName("desk"), Origin.NOTED, payload, 1),
                received.toInstant(),
                Duration.ZERO));
    }

    /** An id that nobody has used. */
    public EntryId nextId(OffsetDateTime at) {
        return EntryId.of(at.toInstant().toEpochMilli(), 0, ++made);
    }

    public static OffsetDateTime day(int n) {
        return MONDAY.plusDays(n).plusHours(11);
    }

    public static SetName set(String name) {
        return new SetName(name);
    }

    public static TrayName tray(int number) {
        return new TrayName(Integer.toString(number));
    }

    public static PenName pen(String name) {
        return new PenName(name);
    }

    public static Lot lot(String pen, int eggs) {
        return Lot.of(new PenName(pen), Species.PHEASANT, LocalDate.of(2027, 3, 29), LocalDate.of(2027, 4, 4), eggs);
    }

    public static LoadSet load(int tray, Lot... lots) {
        return new LoadSet(tray(tray), new MachineName("Setter 1"), new SectionName("2"), null, List.of(lots));
    }

    public static EggsSet setting(String set, LoadSet... loads) {
        return new EggsSet(set(set), List.of(loads));
    }

    public static Looked look(String set, int tray, FindingCount... findings) {
        return new Looked(Scope.ofLoad(set(set), tray(tray)), null, null, List.of(findings), 0, null);
    }

    public static Looked look(Scope scope, FindingCount... findings) {
        return new Looked(scope, null, null, List.of(findings), 0, null);
    }

    public static EggsMoved pool(String set, int from, int to, @Nullable Integer eggs) {
        return new EggsMoved(set(set), tray(from), null, eggs, set(set), tray(to), null, null);
    }

    public static Transferred transfer(String set, int... trays) {
        var parts = new ArrayList<TransferOf>();
        for (int tray : trays) {
            parts.add(new TransferOf(set(set), tray(tray), null, null));
        }
        return new Transferred(new MachineName("Hatcher"), parts);
    }

    /** One tray, or part of it, into a basket. */
    public static TransferOf into(String basket, String set, int tray, @Nullable Integer eggs) {
        return new TransferOf(set(set), tray(tray), eggs, new BasketName(basket));
    }

    public static Transferred transfer(TransferOf... parts) {
        return new Transferred(new MachineName("Hatcher"), List.of(parts));
    }

    public static TakenOff pull(Scope scope, Pull pull, int saleable) {
        return new TakenOff(scope, pull, saleable, 0, 0, 0);
    }

    public static BrokenOut open(Scope scope, int opened, @Nullable Integer clears, ClassCount... classes) {
        return new BrokenOut(scope, opened, clears, List.of(classes));
    }

    public static Scope tray(String set, int number) {
        return Scope.ofLoad(set(set), tray(number));
    }

    public static Scope whole(String set) {
        return Scope.ofSet(set(set));
    }

    public static Scope basket(String name) {
        return Scope.ofBasket(new BasketName(name));
    }

    public static ClassCount as(BreakOutClass what, int eggs) {
        return new ClassCount(what, eggs);
    }
}
