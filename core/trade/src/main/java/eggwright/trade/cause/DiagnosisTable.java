package eggwright.trade.cause;

import eggwright.trade.source.Sources;
import eggwright.trade.table.CsvTable;
import java.util.List;

/** Signs and their probable causes, in the order of the table. */
public final class DiagnosisTable {
    private DiagnosisTable() {}

    public static List<Diagnosis> all() {
        return CsvTable.beside(DiagnosisTable.class, "/eggwright/trade/diagnosis.csv").rows().stream()
                .map(row -> new Diagnosis(
                        row.getOrDefault("sign", ""),
                        row.getOrDefault("stage", ""),
                        row.getOrDefault("probable_cause", ""),
                        row.getOrDefault("check", ""),
                        row.getOrDefault("action", ""),
                        Sources.shipped().read(row.getOrDefault("source", ""))))
                .toList();
    }
}
