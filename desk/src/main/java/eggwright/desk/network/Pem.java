package eggwright.desk.network;

import java.io.ByteArrayInputStream;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.Base64;

/** Keys and certificates as text (RFC 7468). */
final class Pem {
    private static final String KEY = "PRIVATE KEY";
    private static final String CERTIFICATE = "CERTIFICATE";
    private static final int LINE = 64;

    private Pem() {}

    static String of(PrivateKey key) {
        return block(KEY, key.getEncoded());
    }

    static String of(X509Certificate certificate) throws GeneralSecurityException {
        return block(CERTIFICATE, certificate.getEncoded());
    }

    static PrivateKey key(String pem) throws GeneralSecurityException {
        return KeyFactory.getInstance("EC").generatePrivate(new PKCS8EncodedKeySpec(bytes(KEY, pem)));
    }

    static X509Certificate certificate(String pem) throws GeneralSecurityException {
        return (X509Certificate) CertificateFactory.getInstance("X.509")
                .generateCertificate(new ByteArrayInputStream(bytes(CERTIFICATE, pem)));
    }

    private static String block(String label, byte[] bytes) {
        return "-----BEGIN " + label + "-----\n"
                + Base64.getMimeEncoder(LINE, new byte[] {'\n'}).encodeToString(bytes) + "\n-----END " + label
                + "-----\n";
    }

    private static byte[] bytes(String label, String pem) throws GeneralSecurityException {
        var begin = "-----BEGIN " + label + "-----";
        var from = pem.indexOf(begin);
        var to = pem.indexOf("-----END " + label + "-----");
        if (from < 0 || to < from) {
            throw new GeneralSecurityException("There is no " + label + " in it");
        }
        try {
            return Base64.getMimeDecoder().decode(pem.substring(from + begin.length(), to));
        } catch (IllegalArgumentException notBase64) {
            throw new GeneralSecurityException("Its text is damaged", notBase64);
        }
    }
}
