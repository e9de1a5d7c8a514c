package eggwright.store;

import eggwright.book.name.EntryId;
import eggwright.wire.EntryCodec;
import eggwright.wire.ReadEntry;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads a whole book and notes what does not hold. */
final class Verifying {
    private static final int MOST_FAULTS = 50;

    private final SqliteEntryStore store;
    private final List<String> faults = new ArrayList<>();
    private final SortedMap<String, Long> byKind = new TreeMap<>();
    private final Set<EntryId> ids = new HashSet<>();
    private byte[] rolling = Digests.none();
    private long entries;

    private Verifying(SqliteEntryStore store) {
        this.store = store;
    }

    /** @param upTo how many entries, from the first; those received after are left out */
    static Verified verify(SqliteEntryStore store, long upTo) {
        var verifying = new Verifying(store);
        try {
            verifying.database();
            store.eachRow(0, upTo, verifying::entry);
            store.readings().faults().forEach(verifying::fault);
            verifying.manifest();
        } catch (StoreFault stopped) {
            verifying.fault("Reading stopped after " + verifying.entries + " entries: " + stopped.getMessage());
        }
        return verifying.verified();
    }

    private Verified verified() {
        return new Verified(entries, byKind, HexFormat.of().formatHex(rolling), faults);
    }

    private void manifest() {
        var manifest = store.ask(Manifest::in);
        if (manifest.isPresent() && !manifest.get().equals(Manifest.of(verified()))) {
            fault("The manifest of this backup tells of " + manifest.get().entries() + " entries; " + entries
                    + " are there, and they are not the same.");
        }
    }

    private void database() {
        store.ask(connection -> {
            try (var check = connection.createStatement();
                    var rows = check.executeQuery("pragma integrity_check(5)")) {
                while (rows.next()) {
                    if (!rows.getString(1).equals("ok")) {
                        fault("The file is damaged: " + rows.getString(1) + ".");
                    }
                }
            }
            try (var check = connection.createStatement();
                    var rows = check.executeQuery("select farm from entry where farm not in (select farm from farm)")) {
                if (rows.next()) {
                    fault("Entries of farm " + rows.getString(1) + " lie in the book of farm " + store.farm() + ".");
                }
            }
            return faults.size();
        });
    }

    private void entry(EntryRows.Row row) {
        entries++;
        if (row.seq() != entries) {
            fault("Entry number " + entries + " is missing: the next one has number " + row.seq() + ".");
            entries = row.seq();
        }
        byKind.merge(row.kind(), 1L, Long::sum);
        rolling = Digests.roll(rolling, Digests.of(row.written()));
        if (!Arrays.equals(Digests.of(row.written()), row.writtenSha256())) {
            fault("Entry " + row.id() + " is not as it was received.");
        }
        if (!ids.add(row.id())) {
            fault("Entry " + row.id() + " is in the book twice.");
        }
        switch (EntryCodec.read(row.written())) {
            case ReadEntry.Malformed(var reason) -> fault("Entry " + row.id() + " cannot be read: " + reason);
            case ReadEntry.Whole(var entry) -> {
                if (!entry.id().equals(row.id())
                        || !entry.farm().equals(store.farm())
                        || !entry.payload().kindWord().equals(row.kind())
                        || !entry.happened().toInstant().toString().equals(row.happenedAt())) {
                    fault("Entry " + row.id()
                            + " is filed under another id, farm, kind or instant than its text says.");
                }
            }
        }
    }

    private void fault(String what) {
        if (faults.size() < MOST_FAULTS) {
            faults.add(what);
        }
    }
}
