package eggwright.desk.network;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.List;
import javax.net.SocketFactory;
import javax.net.ssl.SNIHostName;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.SSLSocketFactory;
import javax.net.ssl.TrustManagerFactory;

/**
 * Sockets of a device that trusts one authority and nothing else, and asks for the desk by its name, wherever that is
 * today.
 */
public final class TrustingSockets extends SocketFactory {
    private final SSLSocketFactory sockets;
    private final String name;

    private TrustingSockets(SSLSocketFactory sockets, String name) {
        this.sockets = sockets;
        this.name = name;
    }

    public static TrustingSockets of(FarmAuthority authority, String name) {
        return new TrustingSockets(context(authority).getSocketFactory(), name);
    }

    /** TLS that trusts this authority alone. */
    public static SSLContext context(FarmAuthority authority) {
        try {
            var trusted = KeyStore.getInstance("PKCS12");
            trusted.load(null, new char[0]);
            trusted.setCertificateEntry("authority", authority.certificate());
            var managers = TrustManagerFactory.getInstance("PKIX");
            managers.init(trusted);
            var context = SSLContext.getInstance("TLS");
            context.init(null, managers.getTrustManagers(), null);
            return context;
        } catch (GeneralSecurityException | IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    @Override
    public Socket createSocket(InetAddress address, int port) throws IOException {
        var socket = (SSLSocket) sockets.createSocket(new Socket(address, port), name, port, true);
        var how = socket.getSSLParameters();
        how.setServerNames(List.of(new SNIHostName(name)));
        how.setEndpointIdentificationAlgorithm("HTTPS");
        socket.setSSLParameters(how);
        socket.startHandshake();
        return socket;
    }

    @Override
    public Socket createSocket(String host, int port) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Socket createSocket(String host, int port, InetAddress local, int localPort) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Socket createSocket(InetAddress address, int port, InetAddress local, int localPort) {
        throw new UnsupportedOperationException();
    }
}
