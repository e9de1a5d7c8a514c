package eggwright.cli.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.PayloadKinds;
import eggwright.book.fold.Ledger;
import eggwright.cli.Run;
import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.invented.season.Season;
import eggwright.invented.truth.Truth;
import eggwright.sheet.table.TableRead;
import eggwright.sheet.table.TableReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportTablesTest {
    private static final Ledger SEASON =
            Ledger.of(Season.of(Truth.PLAIN, 3, LocalDate.of(2027, 3, 22)).entries());

    @TempDir
    private Path folder;

    private static long whole(Answer row, String column) {
        return row.fields().stream()
                .filter(f -> f.key().equals(column))
                .mapToLong(f -> ((Value.Whole) f.value()).number())
                .sum();
    }

    @Test
    void rows_holdOnlyColumnsOfTheirTable_inTheirOrder() {
        for (var table : ExportTables.all()) {
            var rows = table.rows().apply(SEASON);
            for (var row : rows) {
                var keys = row.fields().stream().map(Answer.Field::key).toList();
                assertEquals(table.columns().stream().filter(keys::contains).toList(), keys, table.name());
            }
        }
        var filled = ExportTables.all().stream()
                .filter(t -> !t.rows().apply(SEASON).isEmpty())
                .map(ExportTable::name)
                .toList();
        assertTrue(filled.size() > 15, filled.toString());
    }

    @Test
    void fatesOfASet_sumToItsEggs() {
        var table = ExportTables.named("sets").orElseThrow();
        var fates = table.columns().subList(6, table.columns().size());
        for (var set : table.rows().apply(SEASON)) {
            assertEquals(
                    whole(set, "eggs"),
                    fates.stream().mapToLong(f -> whole(set, f)).sum());
        }
    }

    /** The documentation names each table with its columns, in their order. */
    @Test
    void everyTable_isDocumented() throws Exception {
        var page = Files.readString(Path.of("../docs/formats/tables.md"));
        for (var table : ExportTables.all()) {
            var columns = "`" + String.join("`, `", table.columns()) + "`";
            assertTrue(
                    page.replaceAll("\\s+", " ").contains("`" + table.name() + "` | " + columns + " |"),
                    table.name() + " | " + columns);
        }
    }

    /** What a person noted can be had as a table; habits, own figures and changes of pens and machines stand in others. */
    @Test
    void everyKindOfNote_isInTheListOfEntries() {
        var kinds = new TreeSet<String>();
        for (var row : ExportTables.named("entries").orElseThrow().rows().apply(SEASON)) {
            row.fields().stream()
                    .filter(f -> f.key().equals("kind"))
                    .forEach(f -> kinds.add(((Value.Text) f.value()).text()));
        }
        assertTrue(PayloadKinds.words().containsAll(kinds) && kinds.size() > 15, kinds.toString());
    }

    @Test
    void csv_readsBack_andHoldsNothingThatASpreadsheetWouldRun() throws Exception {
        var data = folder.resolve("farm").toString();
        Files.writeString(
                folder.resolve("s.csv"), "set,set_on,species,pen,tray,eggs\n=1+1,2027-04-05,pheasant,@home,-7,54\n");
        assertEquals(
                0,
                Run.of("import", "season", folder.resolve("s.csv").toString(), "--data", data)
                        .status());
        var run = Run.of("export", "--table", "lots", "--data", data);
        assertEquals(0, run.status(), run.err());
        var table = ((TableRead.Read) TableReader.read(run.out().getBytes(StandardCharsets.UTF_8), "lots.csv")).table();
        assertTrue(run.out().contains(",'=1+1,") && run.out().contains(",'@home,"), run.out());
        assertEquals(1, table.rows().size());
        var json = Run.of("export", "--table", "lots", "--json", "--data", data);
        assertTrue(json.out().contains("\"set\":\"=1+1\"") && json.out().contains("\"eggs\":54"), json.out());
    }

    @Test
    void unknownTable_isRefused_withThoseThereAre() {
        var run = Run.of("export", "--table", "chickens", "--data", folder.toString());
        assertEquals(2, run.status());
        assertTrue(
                run.err().contains("There is no table \"chickens\"")
                        && run.err().contains("gatherings"),
                run.err());
    }

    /** Out as JSON Lines and into a new folder: the same book, line for line, and known when it comes again. */
    @Test
    void exportedBook_isTheSameBook_inANewFolder() throws Exception {
        var first = folder.resolve("first").toString();
        var second = folder.resolve("second").toString();
        assertEquals(0, Run.of("simulate", "--seed", "7", "--out", first).status());
        var lines = Run.of("export", "--data", first).out();
        var file = Files.writeString(folder.resolve("farm.jsonl"), lines).toString();
        var into = Run.of("import", "book", file, "--data", second, "--json");
        assertEquals(0, into.status(), into.err());
        assertEquals("{\"new_entries\":" + lines.lines().count() + ",\"known_entries\":0}\n", into.out());
        assertEquals(lines, Run.of("export", "--data", second).out());
        for (var ask : List.of("report", "forecast")) {
            assertEquals(
                    Run.of(ask, "--json", "--data", first).out(),
                    Run.of(ask, "--json", "--data", second).out());
        }
        var again = Run.of("import", "book", file, "--data", second, "--json");
        assertEquals("{\"new_entries\":0,\"known_entries\":" + lines.lines().count() + "}\n", again.out());
    }

    @Test
    void spoiltBook_isRefused_lineByLine_andNothingIsWritten() throws Exception {
        var first = folder.resolve("first").toString();
        assertEquals(0, Run.of("simulate", "--seed", "7", "--out", first).status());
        var lines = Run.of("export", "--data", first).out().lines().limit(5).toList();
        var spoilt = List.of(
                lines.get(0),
                "not a line",
                lines.get(1).replaceFirst("\"farm\":\"[^\"]*\"", "\"farm\":\"Elsewhere\""),
                lines.get(2).substring(0, 60));
        var file = Files.write(folder.resolve("spoilt.jsonl"), spoilt);
        var run = Run.of(
                "import",
                "book",
                file.toString(),
                "--data",
                folder.resolve("none").toString());
        assertEquals(2, run.status());
        assertTrue(
                run.err().contains("spoilt.jsonl, line 2: ")
                        && run.err().contains("line 3: this entry is of the farm \"Elsewhere\"")
                        && run.err().contains("line 4: "),
                run.err());
        assertTrue(Files.notExists(folder.resolve("none")));
        assertEquals(
                2,
                Run.of("import", "book", folder.resolve("nowhere").toString()).status());
    }
}
