package eggwright.sheet.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import eggwright.book.entry.Kept;
import eggwright.book.fold.Ledger;
import eggwright.book.name.FarmId;
import eggwright.book.name.PersonName;
import eggwright.book.name.SetName;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.sheet.table.Table;
import eggwright.sheet.table.TableRead;
import eggwright.sheet.table.TableReader;
import eggwright.wire.EntryCodec;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** A farm that imports season files; its book is a list. */
final class Seasons {
    static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    static final Importing FARM = farmIn(CHICAGO);

    /** Rows of one set are told from these columns where a test gives only what matters. */
    static final String SHORT = "set,set_on,species,tray,eggs";

    private final List<Kept> book = new ArrayList<>();

    static Importing farmIn(ZoneId zone) {
        return new Importing(
                new FarmId("alder-brook"),
                zone,
                new PersonName("Ines"),
                OffsetDateTime.parse("2027-09-01T18:00-05:00"),
                EntryCodec::write);
    }

    static Table table(String... lines) {
        return table(String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
    }

    static Table table(byte[] bytes) {
        return assertInstanceOf(TableRead.Read.class, TableReader.read(bytes, "season.csv"))
                .table();
    }

    List<Kept> book() {
        return book;
    }

    SeasonRead read(String... lines) {
        return SeasonImport.read(table(lines), FARM, book);
    }

    /** Takes a file that has to be fine into the book. */
    SeasonRead.Entries keep(String... lines) {
        return keep(table(lines));
    }

    SeasonRead.Entries keep(Table table) {
        var read = SeasonImport.read(table, FARM, book);
        if (read instanceof SeasonRead.Refused refused) {
            throw new AssertionError(refused.problems().toString());
        }
        var entries = assertInstanceOf(SeasonRead.Entries.class, read);
        for (var offered : entries.offered()) {
            if (book.stream().noneMatch(k -> k.entry().isSameAs(offered.entry()))) {
                book.add(new Kept(offered.entry(), Instant.parse("2027-09-01T23:00:00Z"), offered.clockOffset()));
            }
        }
        return entries;
    }

    /** What is wrong with a file, in words. */
    List<String> problems(String... lines) {
        return assertInstanceOf(SeasonRead.Refused.class, read(lines)).problems().stream()
                .map(eggwright.sheet.problem.Problem::words)
                .toList();
    }

    /** The one thing that is wrong with a file. */
    String problem(String... lines) {
        var problems = problems(lines);
        assertEquals(1, problems.size(), problems.toString());
        return problems.getFirst();
    }

    List<String> warnings(String... lines) {
        return assertInstanceOf(SeasonRead.Entries.class, read(lines)).warnings().stream()
                .map(Warning::words)
                .toList();
    }

    Ledger ledger() {
        return Ledger.of(book);
    }

    EggAccount account(String set) {
        return ledger().picture().set(new SetName(set)).orElseThrow().account();
    }

    /** The fates of a set that are not nought. */
    Map<Fate, Integer> fates(String set) {
        var account = account(set);
        var fates = new EnumMap<Fate, Integer>(Fate.class);
        for (var fate : Fate.values()) {
            if (account.eggs(fate) > 0) {
                fates.put(fate, account.eggs(fate));
            }
        }
        return fates;
    }
}
