package eggwright.intake.mqtt;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.CertificateFactory;
import javax.net.SocketFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/** Trusts the authorities of one file, and no other. */
final class Trust {
    private Trust() {}

    static SocketFactory in(Path pem) throws BrokerRefused {
        try (var in = Files.newInputStream(pem)) {
            var trusted = KeyStore.getInstance(KeyStore.getDefaultType());
            trusted.load(null, null);
            int number = 0;
            for (var certificate : CertificateFactory.getInstance("X.509").generateCertificates(in)) {
                trusted.setCertificateEntry("authority-" + number++, certificate);
            }
            var managers = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
            managers.init(trusted);
            var context = SSLContext.getInstance("TLS");
            context.init(null, managers.getTrustManagers(), null);
            return context.getSocketFactory();
        } catch (IOException | GeneralSecurityException unread) {
            throw new BrokerRefused(BrokerState.Why.NOT_TRUSTED, pem + ": " + unread.getMessage());
        }
    }
}
