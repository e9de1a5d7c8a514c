package eggwright.desk.network;

import java.io.IOException;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The farm's own small authority: made when the desk is first opened to the network, kept in the data folder, trusted once
 * on each phone. It vouches for the certificate that the desk shows, and renews it by itself.
 */
public final class FarmAuthority {
    /** Renewed so long before its end, that a phone that was away for weeks never meets an old one. */
    static final Duration RENEWED_BEFORE = Duration.ofDays(60);

    private static final Logger LOG = LoggerFactory.getLogger(FarmAuthority.class);
    private static final String AUTHORITY = "authority.pem";
    private static final String DESK = "desk.pem";

    private final KeyFiles files;
    private final DeskName name;
    private final InstantSource clock;
    private final Certificates making;
    private final List<String> said = new ArrayList<>();
    private final X509Certificate certificate;
    private final PrivateKey key;
    private Shown shown;

    private record Shown(X509Certificate certificate, PrivateKey key) {}

    /** Whether a renewal was due. */
    public enum Renewal {
        RENEWED,
        NOT_DUE
    }

    private FarmAuthority(KeyFiles files, DeskName name, InstantSource clock, Certificates making)
            throws GeneralSecurityException {
        this.files = files;
        this.name = name;
        this.clock = clock;
        this.making = making;
        said.addAll(files.said());
        var kept = files.read(AUTHORITY);
        if (kept.isPresent() && fits(Pem.certificate(kept.get()))) {
            certificate = Pem.certificate(kept.get());
            key = Pem.key(kept.get());
        } else {
            var keys = making.keys();
            certificate = making.authority(keys, name, clock.instant());
            key = keys.getPrivate();
            files.write(AUTHORITY, Pem.of(key) + Pem.of(certificate));
            said.add(
                    kept.isPresent()
                            ? "A new authority was made for " + name
                                    + ", since the one before was for another name or is"
                                    + " near its end. Each phone has to trust it anew."
                            : "An authority was made for " + name + ". Each phone has to trust it once.");
        }
        shown = deskCertificate();
    }

    /**
     * Opens the authority in a folder, makes it where there is none, and renews the desk's certificate where that is due.
     *
     * @param folder for keys and certificates alone
     * @throws KeysRefused if the files cannot be used, or kept from others
     */
    public static FarmAuthority in(Path folder, DeskName name, InstantSource clock, SecureRandom random) {
        try {
            return new FarmAuthority(KeyFiles.in(folder), name, clock, new Certificates(random));
        } catch (GeneralSecurityException damaged) {
            throw new KeysRefused(
                    "The keys in " + folder + " could not be read (" + damaged.getMessage()
                            + "). The desk was not opened to the network. Bring them back from a copy; or move the folder"
                            + " away, which makes a new authority that each phone has to trust anew.",
                    damaged);
        }
    }

    /** An authority holds its name in its constraints; another name, or the last year of its life, asks for a new one. */
    private boolean fits(X509Certificate authority) throws GeneralSecurityException {
        return Certificates.isHeldTo(authority, name)
                && authority.getNotAfter().toInstant().isAfter(clock.instant().plus(Certificates.DESK_LASTS));
    }

    private Shown deskCertificate() throws GeneralSecurityException {
        var kept = files.read(DESK);
        if (kept.isPresent()) {
            var old = Pem.certificate(kept.get());
            if (isGood(old)) {
                return new Shown(old, Pem.key(kept.get()));
            }
        }
        var keys = making.keys();
        var fresh = making.desk(keys.getPublic(), name, certificate, key, clock.instant());
        files.write(DESK, Pem.of(keys.getPrivate()) + Pem.of(fresh));
        return new Shown(fresh, keys.getPrivate());
    }

    private boolean isGood(X509Certificate old) throws GeneralSecurityException {
        try {
            old.verify(certificate.getPublicKey());
        } catch (GeneralSecurityException ofAnotherAuthority) {
            LOG.debug("The certificate of the desk is of another authority", ofAnotherAuthority);
            return false;
        }
        var now = clock.instant();
        var names = old.getSubjectAlternativeNames();
        return now.isBefore(old.getNotAfter().toInstant().minus(RENEWED_BEFORE))
                && now.isAfter(old.getNotBefore().toInstant())
                && names != null
                && names.stream().anyMatch(one -> name.text().equals(one.get(1)));
    }

    /** Renews the desk's certificate where that is due. Phones notice nothing. */
    public synchronized Renewal renew() {
        try {
            var before = shown;
            shown = deskCertificate();
            return shown.certificate().equals(before.certificate()) ? Renewal.NOT_DUE : Renewal.RENEWED;
        } catch (GeneralSecurityException refused) {
            throw new KeysRefused("The certificate could not be renewed (" + refused.getMessage() + ").", refused);
        }
    }

    /** What happened to the files when they were opened, in words for a person. */
    public List<String> said() {
        return List.copyOf(said);
    }

    /** What phones are to trust. */
    public X509Certificate certificate() {
        return certificate;
    }

    /** What the desk shows to whoever connects. */
    public synchronized X509Certificate shown() {
        return shown.certificate();
    }

    /** SHA-256 of the authority's certificate, as phones show it: {@code 3F:9C:…}. */
    public String fingerprint() {
        try {
            var digest = MessageDigest.getInstance("SHA-256").digest(certificate.getEncoded());
            return HexFormat.ofDelimiter(":").formatHex(digest).toUpperCase(Locale.ROOT);
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("Every Java has SHA-256", impossible);
        }
    }

    /** The certificate as a file for phones. */
    public byte[] file() {
        try {
            return certificate.getEncoded();
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("It was read from these bytes", impossible);
        }
    }

    /** The desk's key and certificate for the server, in memory only. */
    public synchronized KeyStore keys(char[] password) {
        try {
            var keys = KeyStore.getInstance("PKCS12");
            keys.load(null, password);
            keys.setKeyEntry("desk", shown.key(), password, new X509Certificate[] {shown.certificate(), certificate});
            return keys;
        } catch (GeneralSecurityException | IOException impossible) {
            throw new IllegalStateException("A key store in memory", impossible);
        }
    }
}
