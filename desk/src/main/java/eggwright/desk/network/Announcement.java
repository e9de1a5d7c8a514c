package eggwright.desk.network;

import java.io.IOException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.ArrayList;
import java.util.List;
import javax.jmdns.JmDNS;
import javax.jmdns.ServiceInfo;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Says on the farm's network which address the desk's name has now (multicast DNS, RFC 6762), so that phones find it
 * wherever it stands. Only for names that end in .local; others are the router's to know.
 */
public final class Announcement implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Announcement.class);

    private final List<JmDNS> speaking;
    private final List<String> trouble;

    private Announcement(List<JmDNS> speaking, List<String> trouble) {
        this.speaking = speaking;
        this.trouble = trouble;
    }

    /** Begins to say it, on each address of this machine that phones could reach. */
    public static Announcement of(Lan lan) {
        return lan.name().isLocal() ? on(reachable(), lan) : new Announcement(List.of(), List.of());
    }

    static Announcement on(List<InetAddress> addresses, Lan lan) {
        var speaking = new ArrayList<JmDNS>();
        var trouble = new ArrayList<String>();
        var host = lan.name().text().substring(0, lan.name().text().length() - DeskName.LOCAL.length());
        for (var address : addresses) {
            try {
                var one = JmDNS.create(address, host);
                speaking.add(one);
                one.registerService(ServiceInfo.create("_https._tcp.local.", host, lan.port(), "path=/"));
                if (!one.getHostName().equalsIgnoreCase(lan.name() + ".")) {
                    trouble.add("Another machine on " + address.getHostAddress() + " calls itself " + lan.name()
                            + ". Phones there may not find the desk. Rename the other, or see the guide.");
                }
            } catch (IOException silent) {
                LOG.warn("{} is not announced on {}", lan.name(), address.getHostAddress(), silent);
                trouble.add(lan.name() + " could not be announced on " + address.getHostAddress() + " ("
                        + silent.getMessage() + "). Let the router know the name instead: see the guide.");
            }
        }
        return new Announcement(List.copyOf(speaking), List.copyOf(trouble));
    }

    /** What keeps phones from finding the desk, in words; empty where nothing does. */
    public List<String> trouble() {
        return trouble;
    }

    /** The addresses on which it is said. */
    public List<InetAddress> addresses() {
        return speaking.stream()
                .map(one -> {
                    try {
                        return one.getInetAddress();
                    } catch (IOException closed) {
                        return InetAddress.getLoopbackAddress();
                    }
                })
                .toList();
    }

    /** The machine's own addresses of version 4 on networks that carry multicast, its loopback left out. */
    static List<InetAddress> reachable() {
        try {
            return NetworkInterface.networkInterfaces()
                    .filter(Announcement::carriesMulticast)
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(address -> address instanceof Inet4Address && !address.isLoopbackAddress())
                    .toList();
        } catch (SocketException none) {
            LOG.warn("This machine told nothing of its networks", none);
            return List.of();
        }
    }

    private static boolean carriesMulticast(NetworkInterface one) {
        try {
            return one.isUp() && one.supportsMulticast() && !one.isPointToPoint();
        } catch (SocketException gone) {
            return false;
        }
    }

    @Override
    public void close() {
        for (var one : speaking) {
            try {
                one.close();
            } catch (IOException gone) {
                LOG.debug("The announcement ended by itself", gone);
            }
        }
    }
}
