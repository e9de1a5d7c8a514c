package eggwright.desk.network;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.security.cert.CertPathValidator;
import java.security.cert.CertPathValidatorException;
import java.security.cert.CertificateFactory;
import java.security.cert.PKIXParameters;
import java.security.cert.TrustAnchor;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Date;
import java.util.List;
import java.util.Set;
import javax.security.auth.x500.X500Principal;
import org.bouncycastle.asn1.ASN1ObjectIdentifier;
import org.bouncycastle.asn1.ASN1OctetString;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

final class FarmAuthorityTest {
    private static final DeskName NAME = new DeskName("larkfield.local");
    private static final SecureRandom RANDOM = new SecureRandom();

    @TempDir
    private Path data;

    private Instant now = Instant.parse("2027-03-01T08:00:00Z");
    private final InstantSource clock = () -> now;

    private Path folder() {
        return data.resolve("authority");
    }

    private FarmAuthority open() {
        return FarmAuthority.in(folder(), NAME, clock, RANDOM);
    }

    private static String rights(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void keys_areForTheirOwnerAlone() throws IOException {
        open();

        assertEquals("rwx------", rights(folder()));
        try (var files = Files.list(folder())) {
            for (var file : files.toList()) {
                assertEquals("rw-------", rights(file), file.toString());
            }
        }
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void keys_thatOthersCouldRead_areClosedWithAWord() throws IOException {
        open();
        var key = folder().resolve("authority.pem");
        Files.setPosixFilePermissions(key, PosixFilePermissions.fromString("rw-r--r--"));
        Files.setPosixFilePermissions(folder(), PosixFilePermissions.fromString("rwxr-xr-x"));
        var said = open().said();

        assertEquals("rw-------", rights(key));
        assertEquals("rwx------", rights(folder()));
        assertEquals(2, said.size(), said.toString());
        assertTrue(said.getLast().startsWith(key + " could be used by others (rw-r--r--)"), said.toString());
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void keys_behindALink_areNotUsed() throws IOException {
        open();
        var key = folder().resolve("authority.pem");
        var elsewhere = Files.move(key, data.resolve("elsewhere.pem"));
        Files.createSymbolicLink(key, elsewhere);

        var refused = assertThrows(KeysRefused.class, this::open);
        assertTrue(String.valueOf(refused.getMessage()).contains("is a link to elsewhere"));
    }

    @Test
    void keys_thatAreDamaged_areNotUsed_andLeftAsTheyAre() throws IOException {
        open();
        var key = folder().resolve("authority.pem");
        Files.writeString(key, "-----BEGIN CERTIFICATE-----\nnothing\n");

        assertThrows(KeysRefused.class, this::open);
        assertEquals("-----BEGIN CERTIFICATE-----\nnothing\n", Files.readString(key));
    }

    @Test
    void authority_staysTheSame_whenTheDeskIsOpenedAgain() {
        var first = open();
        var again = open();

        assertEquals(first.fingerprint(), again.fingerprint());
        assertEquals(first.shown(), again.shown());
        assertEquals(List.of(), again.said());
        assertEquals(32 * 3 - 1, first.fingerprint().length());
    }

    @Test
    void certificates_lastAsTheyShould() {
        var authority = open();

        assertEquals(
                now.plus(Duration.ofDays(3652)),
                authority.certificate().getNotAfter().toInstant());
        var whole = Duration.between(
                authority.shown().getNotBefore().toInstant(),
                authority.shown().getNotAfter().toInstant());
        assertTrue(whole.compareTo(Duration.ofDays(398)) <= 0, whole.toString());
    }

    @Test
    void certificate_isRenewedByItself_beforeItsEnd_andNotEarlier() {
        var authority = open();
        var first = authority.shown();
        var renewedFrom = first.getNotAfter().toInstant().minus(FarmAuthority.RENEWED_BEFORE);

        now = renewedFrom.minusSeconds(1);
        assertEquals(FarmAuthority.Renewal.NOT_DUE, authority.renew());
        now = renewedFrom.plusSeconds(1);
        assertEquals(FarmAuthority.Renewal.RENEWED, authority.renew());
        assertNotEquals(first, authority.shown());
        assertEquals(
                now.plus(Certificates.DESK_LASTS),
                authority.shown().getNotAfter().toInstant());
        assertEquals(authority.shown(), open().shown(), "kept, not made anew at each start");
    }

    @Test
    void certificate_neverOutlivesItsAuthority_andANewAuthorityIsMadeInTime() {
        var first = open();
        now = first.certificate()
                .getNotAfter()
                .toInstant()
                .minus(Certificates.DESK_LASTS)
                .minusSeconds(5);
        var old = open();
        assertEquals(first.fingerprint(), old.fingerprint());
        assertFalse(old.shown()
                .getNotAfter()
                .toInstant()
                .isAfter(old.certificate().getNotAfter().toInstant()));

        now = now.plusSeconds(10);
        var next = open();
        assertNotEquals(first.fingerprint(), next.fingerprint());
        assertTrue(
                next.said().getFirst().contains("Each phone has to trust it anew"),
                next.said().toString());
    }

    @Test
    void anotherName_takesAnotherAuthority_alsoWhereOneNameEndsAsTheOther() {
        var first = FarmAuthority.in(folder(), new DeskName("larkfarm.local"), clock, RANDOM);
        var second = FarmAuthority.in(folder(), new DeskName("farm.local"), clock, RANDOM);

        assertNotEquals(first.fingerprint(), second.fingerprint());
    }

    @Test
    void chain_isGood_byTheRulesOfRfc5280() throws Exception {
        var authority = open();

        assertDoesNotThrow(() -> validate(authority.shown(), authority.certificate()));
        assertTrue(authority.shown().getSubjectAlternativeNames().stream()
                .anyMatch(name -> "larkfield.local".equals(name.get(1))));
    }

    /** Whoever stole the key could vouch for the desk, and for no bank. */
    @Test
    void authority_canVouchForNoOtherName() throws Exception {
        open();
        var pem = Files.readString(folder().resolve("authority.pem"), StandardCharsets.US_ASCII);
        var making = new Certificates(RANDOM);
        var bank = making.desk(
                making.keys().getPublic(), new DeskName("bank.example"), Pem.certificate(pem), Pem.key(pem), now);

        var refused = assertThrows(CertPathValidatorException.class, () -> validate(bank, Pem.certificate(pem)));
        assertEquals(java.security.cert.PKIXReason.INVALID_NAME, refused.getReason());
    }

    /**
     * By the Java library's own rules. It does not look at the constraints of what it is told to trust, so the authority
     * stands here under another that it is told to trust, as the same key with the same fields.
     */
    private void validate(X509Certificate shown, X509Certificate authority) throws Exception {
        var keys = new Certificates(RANDOM).keys();
        var root = new X500Name("CN=Test root");
        var crossed = new JcaX509v3CertificateBuilder(
                root,
                BigInteger.TWO,
                authority.getNotBefore(),
                authority.getNotAfter(),
                X500Name.getInstance(authority.getSubjectX500Principal().getEncoded()),
                authority.getPublicKey());
        for (var field : authority.getCriticalExtensionOIDs()) {
            crossed.addExtension(
                    new ASN1ObjectIdentifier(field),
                    true,
                    ASN1OctetString.getInstance(authority.getExtensionValue(field))
                            .getOctets());
        }
        var signed = new JcaX509CertificateConverter()
                .getCertificate(crossed.build(new JcaContentSignerBuilder("SHA256withECDSA").build(keys.getPrivate())));
        var how =
                new PKIXParameters(Set.of(new TrustAnchor(new X500Principal("CN=Test root"), keys.getPublic(), null)));
        how.setRevocationEnabled(false);
        how.setDate(Date.from(now));
        var path = CertificateFactory.getInstance("X.509").generateCertPath(List.of(shown, signed));
        CertPathValidator.getInstance("PKIX").validate(path, how);
    }
}
