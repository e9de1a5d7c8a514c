package eggwright.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** SHA-256 (FIPS 180-4), 32 bytes. */
final class Digests {
    private static final int BYTES = 32;

    private Digests() {}

    static byte[] of(String written) {
        return sha256().digest(written.getBytes(StandardCharsets.UTF_8));
    }

    /** What a rolling digest begins with. */
    static byte[] none() {
        return new byte[BYTES];
    }

    /** The digest of all up to here, from that of all before and that of the next text. */
    static byte[] roll(byte[] before, byte[] next) {
        var digest = sha256();
        digest.update(before);
        return digest.digest(next);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java has SHA-256", impossible);
        }
    }
}
