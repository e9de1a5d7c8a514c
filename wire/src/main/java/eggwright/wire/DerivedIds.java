package eggwright.wire;

import eggwright.book.entry.Payload;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** Ids of imported rows: the same row gives the same id, whenever and wherever it is imported. */
public final class DerivedIds {
    private DerivedIds() {}

    /**
     * From a SHA-256 of farm, kind, set, tray and the canonical payload. When a kind that imports write gets a new
     * version, ids have to be taken from the form before, or an old sheet imported again would count twice;
     * {@code DerivedIdsTest} holds one id to notice it.
     */
    public static EntryId of(FarmId farm, SetName set, TrayName tray, Payload payload) {
        var content = String.join(
                "\n", farm.text(), payload.kindWord(), set.text(), tray.text(), EntryCodec.written(payload));
        try {
            var digest = ByteBuffer.wrap(
                    MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8)));
            return EntryId.derived(digest.getLong(), digest.getLong());
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java has SHA-256", impossible);
        }
    }
}
