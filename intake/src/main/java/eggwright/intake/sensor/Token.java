package eggwright.intake.sensor;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;
import java.util.random.RandomGenerator;

/**
 * What a sensor shows to be let in: {@value #BITS} random bits in the letters of base64url (RFC 4648, section 5), which
 * an HTTP header and an MQTT topic both take as they are. It cannot be guessed, so a plain SHA-256 keeps it safe at rest.
 */
final class Token {
    private static final int BITS = 256;

    private Token() {}

    static String fresh(RandomGenerator random) {
        var bytes = new byte[BITS / Byte.SIZE];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    static String sha256(String token) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(token.getBytes(UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java has SHA-256", impossible);
        }
    }
}
