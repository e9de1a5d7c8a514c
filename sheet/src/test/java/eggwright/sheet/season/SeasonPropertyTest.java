package eggwright.sheet.season;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.book.picture.Picture;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A random season, however it is written down, is the same entries; and its account adds up. */
class SeasonPropertyTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 3, 1);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void season_isTheSame_howeverItIsWritten(long seed) {
        var random = new Random(seed);
        var rows = season(random);
        var columns = new ArrayList<>(List.of(SeasonColumn.values()));
        var plain = new Seasons();
        var first = plain.keep(Seasons.table(written(rows, columns, ',', "\n", "")));
        for (var separator : List.of(',', ';', '\t')) {
            for (var end : List.of("\n", "\r\n")) {
                for (var mark : List.of("", "\uFEFF")) {
                    Collections.shuffle(rows, random);
                    Collections.shuffle(columns, random);
                    var other = new Seasons();
                    var read = other.keep(Seasons.table(written(rows, columns, separator, end, mark)));
                    assertEquals(first.offered(), read.offered());
                }
            }
        }
        Collections.shuffle(rows, random);
        assertEquals(
                0,
                plain.keep(Seasons.table(written(rows, columns, ';', "\n", ""))).newRows());
        Picture picture = plain.ledger().picture();
        assertEquals(List.of(), picture.discrepancies());
        for (var account : picture.accounts()) {
            assertEquals(
                    account.eggsSet(),
                    account.fates().stream().mapToInt(f -> f.eggs()).sum());
        }
    }

    private static byte[] written(
            List<Map<SeasonColumn, String>> rows, List<SeasonColumn> columns, char separator, String end, String mark) {
        var between = String.valueOf(separator);
        var text = new StringBuilder(mark)
                .append(columns.stream().map(SeasonColumn::word).collect(Collectors.joining(between)))
                .append(end);
        for (var row : rows) {
            text.append(columns.stream()
                            .map(c -> quoted(row.getOrDefault(c, "")))
                            .collect(Collectors.joining(between)))
                    .append(end);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String quoted(String cell) {
        return cell.chars().anyMatch(c -> ",;\"".indexOf(c) >= 0) ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
    }

    private static List<Map<SeasonColumn, String>> season(Random random) {
        var rows = new ArrayList<Map<SeasonColumn, String>>();
        int sets = 1 + random.nextInt(6);
        for (int set = 1; set <= sets; set++) {
            int trays = 1 + random.nextInt(5);
            for (int tray = 1; tray <= trays; tray++) {
                rows.add(row(random, "Set; " + set, FIRST.plusDays(7L * set), tray));
            }
        }
        return rows;
    }

    private static Map<SeasonColumn, String> row(Random random, String set, LocalDate on, int tray) {
        var row = new EnumMap<SeasonColumn, String>(SeasonColumn.class);
        row.put(SeasonColumn.SET, set);
        row.put(SeasonColumn.SET_ON, on.toString());
        row.put(SeasonColumn.SPECIES, random.nextBoolean() ? "pheasant" : "Pheasants");
        row.put(SeasonColumn.TRAY, "Fach \"" + tray + "\", ä");
        row.put(SeasonColumn.PEN, "Pen " + random.nextInt(3));
        row.put(SeasonColumn.LAID_FROM, on.minusDays(7).toString());
        int eggs = 1 + random.nextInt(200);
        row.put(SeasonColumn.EGGS, String.valueOf(eggs));
        int left = eggs;
        int clear = 0;
        if (random.nextInt(4) > 0) {
            row.put(SeasonColumn.CANDLED_ON, on.plusDays(8).toString());
            for (var column : SeasonColumn.REMOVED) {
                int out = random.nextInt(1 + left / 4);
                row.put(column, String.valueOf(out));
                clear += column == SeasonColumn.CLEAR ? out : 0;
                left -= out;
            }
        }
        if (random.nextInt(4) > 0) {
            row.put(SeasonColumn.TRANSFERRED_ON, on.plusDays(21).toString());
            row.put(SeasonColumn.TRANSFERRED, String.valueOf(left));
        }
        if (random.nextInt(4) > 0) {
            row.put(SeasonColumn.HATCHED_ON, on.plusDays(24).toString());
            for (var column : SeasonColumn.TAKE_OFF) {
                int out = random.nextInt(1 + left);
                row.put(column, String.valueOf(out));
                left -= out;
            }
            breakOut(random, row, left, clear);
        }
        return row;
    }

    private static void breakOut(Random random, Map<SeasonColumn, String> row, int left, int clear) {
        int clearsOpened = random.nextInt(1 + clear);
        int opened = clearsOpened + random.nextInt(1 + left);
        row.put(SeasonColumn.OPENED, String.valueOf(opened));
        row.put(SeasonColumn.CLEARS_OPENED, String.valueOf(clearsOpened));
        int rest = opened;
        for (var column : SeasonColumn.CLASSES) {
            int named = column == SeasonColumn.MALFORMED ? rest : random.nextInt(1 + rest);
            row.put(column, String.valueOf(named));
            rest -= named;
        }
    }
}
