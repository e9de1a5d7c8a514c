package eggwright.intake.mqtt;

import eggwright.units.OutOfRange;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * Where a broker is, and what is heard of it.
 *
 * @param topic before the token: {@code eggwright/readings}
 * @param user empty where the broker asks for none
 * @param password empty where the broker asks for none
 * @param authority a PEM file of the authority that vouches for the broker; empty for those that Java trusts
 */
public record Broker(
        Scheme scheme,
        String host,
        int port,
        String topic,
        Optional<String> user,
        Optional<String> password,
        Optional<Path> authority) {
    public static final String USUAL_TOPIC = "eggwright/readings";
    private static final int LONGEST_TOPIC = 200;
    private static final int LAST_PORT = 65_535;

    /** Whether the way to it is encrypted. */
    public enum Scheme {
        /** In the open: whoever sees the network reads tokens and readings. */
        MQTT(1883, "tcp"),
        /** By TLS. */
        MQTTS(8883, "ssl");

        private final int usualPort;
        private final String ofTheClient;

        Scheme(int usualPort, String ofTheClient) {
            this.usualPort = usualPort;
            this.ofTheClient = ofTheClient;
        }
    }

    /**
     * @param address as {@code mqtts://broker.larkfield.example:8883}
     * @throws OutOfRange if it is no such address, or the topic cannot be listened to; the message says what would be right
     */
    public static Broker of(
            String address, String topic, Optional<String> user, Optional<String> password, Optional<Path> authority) {
        var uri = uri(address);
        var scheme = switch (String.valueOf(uri.getScheme()).toLowerCase(Locale.ROOT)) {
            case "mqtt" -> Scheme.MQTT;
            case "mqtts" -> Scheme.MQTTS;
            default -> throw wrong(address, "Write mqtts://HOST:8883, or mqtt://HOST:1883 where nothing is encrypted.");
        };
        if (uri.getUserInfo() != null) {
            throw wrong(
                    address.substring(0, address.indexOf(':')) + "://…",
                    "A name and password in it would be seen by everybody who lists what runs. Name the user with"
                            + " --mqtt-user, and keep the password in a file for --mqtt-password-file.");
        }
        var host = uri.getHost();
        if (host == null || !String.valueOf(uri.getPath()).replace("/", "").isEmpty() || uri.getPort() > LAST_PORT) {
            throw wrong(address, "Write the host and perhaps a port, as mqtts://HOST:8883.");
        }
        return new Broker(
                scheme,
                host,
                uri.getPort() < 0 ? scheme.usualPort : uri.getPort(),
                checked(topic),
                user,
                password,
                authority);
    }

    private static URI uri(String address) {
        try {
            return new URI(address);
        } catch (URISyntaxException notAnAddress) {
            throw wrong(address, "Write mqtts://HOST:8883.");
        }
    }

    /** MQTT 3.1.1, section 4.7: signs that stand for others, and topics of the broker itself. */
    private static String checked(String topic) {
        if (topic.isEmpty()
                || topic.length() > LONGEST_TOPIC
                || topic.startsWith("$")
                || topic.startsWith("/")
                || topic.endsWith("/")
                || topic.chars().anyMatch(c -> c == '+' || c == '#' || Character.isISOControl(c))) {
            throw new OutOfRange("\"" + topic + "\" is no topic to listen to. Write one without + and #, as "
                    + USUAL_TOPIC + "; each sensor sends to it with its token behind a slash.");
        }
        return topic;
    }

    private static OutOfRange wrong(String address, String right) {
        return new OutOfRange("\"" + address + "\" is no address of a broker. " + right);
    }

    /** As the client library writes it. */
    String clientUri() {
        return scheme.ofTheClient + "://" + host + ":" + port;
    }

    /** For people. */
    public String address() {
        return scheme.name().toLowerCase(Locale.ROOT) + "://" + host + ":" + port;
    }

    /** Every topic one level below. */
    String filter() {
        return topic + "/+";
    }

    /** Never the password. */
    @Override
    public String toString() {
        return address() + " " + topic;
    }
}
