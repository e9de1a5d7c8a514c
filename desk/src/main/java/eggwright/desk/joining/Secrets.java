package eggwright.desk.joining;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Locale;
import java.util.random.RandomGenerator;

/**
 * Tokens and codes.
 *
 * <p>A token is {@value #TOKEN_BITS} random bits: it cannot be guessed, so a plain SHA-256 keeps it safe at rest. A code is
 * short enough to type, {@value #CODE_LENGTH} signs out of 31, and so is good only because it is short-lived, used once
 * and seldom tried: see {@link Limits}.
 */
public final class Secrets {
    /** Bits of a token. */
    static final int TOKEN_BITS = 256;
    /** Signs of a code. */
    static final int CODE_LENGTH = 8;
    /** Digits and capitals without those that are read for one another: 0 and O, 1, I and L. */
    static final String CODE_SIGNS = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";

    private Secrets() {}

    static String token(RandomGenerator random) {
        var bytes = new byte[TOKEN_BITS / Byte.SIZE];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Every code is equally likely. */
    static String code(RandomGenerator random) {
        var code = new StringBuilder(CODE_LENGTH);
        for (var i = 0; i < CODE_LENGTH; i++) {
            code.append(CODE_SIGNS.charAt(random.nextInt(CODE_SIGNS.length())));
        }
        return code.toString();
    }

    /** As a person reads it out: {@code ABCD-EFGH}. */
    public static String spaced(String code) {
        return code.substring(0, code.length() / 2) + "-" + code.substring(code.length() / 2);
    }

    /** What was meant by what was typed: small letters, spaces and dashes make no difference. */
    static String meant(String typed) {
        return typed.toUpperCase(Locale.ROOT).replaceAll("[\\s-]", "");
    }

    static String sha256(String text) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java has SHA-256", impossible);
        }
    }
}
