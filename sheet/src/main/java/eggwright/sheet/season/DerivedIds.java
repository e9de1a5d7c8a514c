package eggwright.sheet.season;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.EggsSet;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Payload;
import eggwright.book.entry.Remarked;
import eggwright.book.entry.Scope;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.Transferred;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Ids of imported entries, derived from what they say: SHA-256 over farm, kind, set, tray and the payload's own values,
 * each as text led by its length. The same row gives the same ids on every machine and in every later version, so the
 * values are written out here and not left to the form of a record: a field that is added later must not change the ids
 * of rows that do not use it.
 */
final class DerivedIds {
    private DerivedIds() {}

    static EntryId of(FarmId farm, SetName set, TrayName tray, Payload payload) {
        var values = new ArrayList<@Nullable Object>();
        values.add(farm);
        values.add(payload.kindWord());
        values.add(set);
        values.add(tray);
        switch (payload) {
            case EggsSet it -> add(values, it);
            case Looked it -> add(values, it);
            case Transferred it -> add(values, it);
            case TakenOff it -> {
                add(values, it.counted());
                values.addAll(List.of(it.pull(), it.saleable(), it.culled(), it.deadInBasket()));
            }
            case BrokenOut it -> add(values, it);
            case Remarked it -> values.add(it.text());
            default -> throw new IllegalArgumentException("No row of a season gives " + payload.kindWord());
        }
        var digest = ByteBuffer.wrap(digest(values));
        return EntryId.derived(digest.getLong(), digest.getLong());
    }

    private static void add(List<@Nullable Object> values, EggsSet it) {
        for (var load : it.loads()) {
            values.add(load.machine());
            values.add(load.section());
            for (var lot : load.lots()) {
                values.add(lot.pen());
                values.add(lot.species().word());
                values.add(lot.laidFrom());
                values.add(lot.laidTo());
                values.add(lot.eggs());
            }
        }
    }

    private static void add(List<@Nullable Object> values, Looked it) {
        add(values, it.scope());
        for (var count : it.findings()) {
            values.addAll(List.of(count.finding().word(), count.seen(), count.removed()));
        }
    }

    private static void add(List<@Nullable Object> values, Transferred it) {
        for (var part : it.eggs()) {
            values.add(part.tray());
            values.add(part.eggs());
        }
    }

    private static void add(List<@Nullable Object> values, BrokenOut it) {
        add(values, it.scope());
        values.add(it.opened());
        values.add(it.clearsOpened());
        for (var named : it.classes()) {
            values.add(named.what().word());
            values.add(named.eggs());
        }
    }

    private static void add(List<@Nullable Object> values, Scope scope) {
        values.add(scope.tray());
    }

    private static byte[] digest(List<@Nullable Object> values) {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            for (var value : values) {
                if (value == null) {
                    digest.update((byte) '-');
                } else {
                    var bytes = value.toString().getBytes(StandardCharsets.UTF_8);
                    digest.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
                    digest.update(bytes);
                }
            }
            return digest.digest();
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java has SHA-256", impossible);
        }
    }
}
