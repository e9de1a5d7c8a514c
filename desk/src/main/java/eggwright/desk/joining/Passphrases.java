package eggwright.desk.joining;

import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;

/**
 * Slow salted hashes of the owner's passphrase: Argon2id with the second recommended setting of RFC 9106, section 4
 * (3 passes over 64 MiB in 4 lanes, salt of 128 bits, tag of 256 bits).
 */
final class Passphrases {
    /** NIST SP 800-63B-4, section 3.1.1.2: a passphrase that is all there is has at least 15 characters. */
    static final int SHORTEST = 15;
    /** The same: at least 64 have to be taken. Bounded, so that hashing is. */
    static final int LONGEST = 200;

    private static final int SALT_BYTES = 16;
    private static final int TAG_BYTES = 32;
    private static final int LANES = 4;
    private static final int KIB = 1 << 16;
    private static final int PASSES = 3;

    private final Argon2PasswordEncoder encoder = new Argon2PasswordEncoder(SALT_BYTES, TAG_BYTES, LANES, KIB, PASSES);

    String hash(String passphrase) {
        return String.valueOf(encoder.encode(passphrase));
    }

    /** One at a time: each takes 64 MiB while it runs. */
    synchronized boolean fits(String passphrase, String hash) {
        return passphrase.length() <= LONGEST && encoder.matches(passphrase, hash);
    }
}
