package eggwright.desk;

import eggwright.desk.network.FarmAuthority;
import eggwright.desk.network.KeysRefused;
import eggwright.desk.network.Lan;
import io.javalin.config.JettyConfig;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.DetectorConnectionFactory;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The port of a desk that is on the network. It takes https, and tells plain http apart by its first bytes: both under one
 * port, because a browser that was told to come by https only asks for just this port by https.
 */
final class NetworkPort implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(NetworkPort.class);
    private static final long IDLE_MILLIS = 30_000;

    private final Lan lan;
    private final SslContextFactory.Server tls = new SslContextFactory.Server();
    /** Of the key store, which never leaves memory. */
    private final String password;

    private final ScheduledExecutorService renewals = Executors.newSingleThreadScheduledExecutor(
            Thread.ofPlatform().daemon().name("renewals").factory());

    private NetworkPort(Lan lan) {
        this.lan = lan;
        var bytes = new byte[32];
        new SecureRandom().nextBytes(bytes);
        this.password = HexFormat.of().formatHex(bytes);
        tls.setIncludeProtocols("TLSv1.3", "TLSv1.2");
        take(tls);
    }

    static Optional<NetworkPort> of(Reach reach) {
        return switch (reach) {
            case Reach.ThisMachine only -> Optional.empty();
            case Reach.Network(var lan) -> Optional.of(new NetworkPort(lan));
        };
    }

    private void take(SslContextFactory with) {
        with.setKeyStore(lan.authority().keys(password.toCharArray()));
        with.setKeyStorePassword(password);
    }

    /** Adds the port, behind that for this machine itself, which is named first and so is the one the server tells. */
    void addTo(JettyConfig jetty, int ownPort) {
        jetty.addConnector((server, http) -> {
            var own = new ServerConnector(server, new HttpConnectionFactory(http));
            own.setHost(Desk.THIS_MACHINE);
            own.setPort(ownPort);
            return own;
        });
        jetty.addConnector(this::connector);
        var unused = renewals.scheduleWithFixedDelay(this::renew, 6, 6, TimeUnit.HOURS);
    }

    private Connector connector(Server server, HttpConfiguration http) {
        var secure = new HttpConfiguration(http);
        // The door looks at names, and answers in words where one is not the desk's.
        secure.addCustomizer(new SecureRequestCustomizer(false));
        var plain = new HttpConnectionFactory(secure);
        var detector = new DetectorConnectionFactory(new SslConnectionFactory(tls, plain.getProtocol()));
        var connector = new ServerConnector(server, detector, plain);
        connector.setPort(lan.port());
        connector.setIdleTimeout(IDLE_MILLIS);
        return connector;
    }

    /** Shows a renewed certificate from the next connection on. */
    void renew() {
        try {
            if (lan.authority().renew() == FarmAuthority.Renewal.RENEWED) {
                tls.reload(this::take);
                LOG.info("The certificate of {} was renewed", lan.name());
            }
        } catch (KeysRefused refused) {
            LOG.warn("The certificate of {} is kept as it is: {}", lan.name(), refused.getMessage());
        } catch (Exception refused) {
            LOG.warn("The renewed certificate of {} could not be shown", lan.name(), refused);
        }
    }

    @Override
    public void close() {
        renewals.shutdownNow();
    }
}
