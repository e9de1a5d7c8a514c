package eggwright.desk.network;

import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.stream.Stream;
import org.bouncycastle.asn1.ASN1OctetString;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x500.X500NameBuilder;
import org.bouncycastle.asn1.x500.style.BCStyle;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.cert.CertIOException;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/**
 * Makes the certificates of a farm: an authority that can vouch for this one desk and nothing else, and the desk's own.
 * Keys on P-256, signed with ECDSA and SHA-256. Fields as RFC 5280, sections 4.1 and 4.2, has them.
 */
final class Certificates {
    /** The authority lasts ten years. */
    static final Duration AUTHORITY_LASTS = Duration.ofDays(3652);
    /** The desk's certificate lasts a year: under the 398 days after which devices turn one away. */
    static final Duration DESK_LASTS = Duration.ofDays(365);
    /** Valid from a day before it was made, for phones whose clock is behind. */
    static final Duration BEFOREHAND = Duration.ofDays(1);

    private static final String SIGNED_WITH = "SHA256withECDSA";
    private static final int SERIAL_BITS = 127;
    private static final String LOOPBACK_AND_ITS_MASK = "127.0.0.1/32";

    private final SecureRandom random;

    Certificates(SecureRandom random) {
        this.random = random;
    }

    KeyPair keys() throws GeneralSecurityException {
        var generator = KeyPairGenerator.getInstance("EC");
        generator.initialize(new ECGenParameterSpec("secp256r1"), random);
        return generator.generateKeyPair();
    }

    /** An authority that signs for itself. Its constraints hold it to the desk's name and to the machine itself. */
    X509Certificate authority(KeyPair keys, DeskName name, Instant now) throws GeneralSecurityException {
        var subject = named("Desk of " + name + ", " + day(now));
        try {
            var builder = builder(subject, subject, keys.getPublic(), now, AUTHORITY_LASTS)
                    .addExtension(Extension.basicConstraints, true, new BasicConstraints(0))
                    .addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign))
                    .addExtension(
                            Extension.nameConstraints,
                            true,
                            new NameConstraints(
                                    new GeneralSubtree[] {
                                        within(GeneralName.dNSName, name.text()),
                                        within(GeneralName.dNSName, "localhost"),
                                        within(GeneralName.iPAddress, LOOPBACK_AND_ITS_MASK)
                                    },
                                    null))
                    .addExtension(
                            Extension.subjectKeyIdentifier,
                            false,
                            new JcaX509ExtensionUtils().createSubjectKeyIdentifier(keys.getPublic()));
            return signed(builder, keys.getPrivate());
        } catch (CertIOException | OperatorCreationException refused) {
            throw new GeneralSecurityException(refused);
        }
    }

    /** Whether an authority is held to this name, as {@link #authority} does it. */
    static boolean isHeldTo(X509Certificate authority, DeskName name) {
        var constraints = authority.getExtensionValue(Extension.nameConstraints.getId());
        return constraints != null
                && Stream.of(NameConstraints.getInstance(
                                        ASN1OctetString.getInstance(constraints).getOctets())
                                .getPermittedSubtrees())
                        .map(GeneralSubtree::getBase)
                        .anyMatch(new GeneralName(GeneralName.dNSName, name.text())::equals);
    }

    /** The desk's certificate, under its name and as this machine itself. */
    X509Certificate desk(PublicKey key, DeskName name, X509Certificate authority, PrivateKey signer, Instant now)
            throws GeneralSecurityException {
        var ends = now.plus(DESK_LASTS);
        var authorityEnds = authority.getNotAfter().toInstant();
        var lasts = Duration.between(now, ends.isAfter(authorityEnds) ? authorityEnds : ends);
        try {
            var extensions = new JcaX509ExtensionUtils();
            var issuer =
                    X500Name.getInstance(authority.getSubjectX500Principal().getEncoded());
            var builder = builder(issuer, named(name.text()), key, now, lasts)
                    .addExtension(Extension.basicConstraints, true, new BasicConstraints(false))
                    .addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature))
                    .addExtension(
                            Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth))
                    .addExtension(Extension.subjectAlternativeName, false, new GeneralNames(new GeneralName[] {
                        new GeneralName(GeneralName.dNSName, name.text()),
                        new GeneralName(GeneralName.dNSName, "localhost"),
                        new GeneralName(GeneralName.iPAddress, "127.0.0.1")
                    }))
                    .addExtension(
                            Extension.authorityKeyIdentifier,
                            false,
                            extensions.createAuthorityKeyIdentifier(authority.getPublicKey()))
                    .addExtension(Extension.subjectKeyIdentifier, false, extensions.createSubjectKeyIdentifier(key));
            return signed(builder, signer);
        } catch (CertIOException | OperatorCreationException refused) {
            throw new GeneralSecurityException(refused);
        }
    }

    private static GeneralSubtree within(int kind, String name) {
        return new GeneralSubtree(new GeneralName(kind, name));
    }

    private static X500Name named(String name) {
        return new X500NameBuilder(BCStyle.INSTANCE)
                .addRDN(BCStyle.CN, shortened(name))
                .build();
    }

    /** A common name holds 64 characters (RFC 5280, appendix A.1, ub-common-name). */
    private static String shortened(String name) {
        return name.length() <= 64 ? name : name.substring(0, 64);
    }

    private static String day(Instant now) {
        return now.atOffset(ZoneOffset.UTC).toLocalDate().toString();
    }

    private X509v3CertificateBuilder builder(
            X500Name issuer, X500Name subject, PublicKey key, Instant now, Duration lasts) {
        return new JcaX509v3CertificateBuilder(
                issuer,
                new BigInteger(SERIAL_BITS, random).setBit(SERIAL_BITS - 1),
                Date.from(now.minus(BEFOREHAND)),
                Date.from(now.plus(lasts)),
                subject,
                key);
    }

    private X509Certificate signed(X509v3CertificateBuilder builder, PrivateKey signer)
            throws GeneralSecurityException, OperatorCreationException {
        var with =
                new JcaContentSignerBuilder(SIGNED_WITH).setSecureRandom(random).build(signer);
        return new JcaX509CertificateConverter().getCertificate(builder.build(with));
    }
}
