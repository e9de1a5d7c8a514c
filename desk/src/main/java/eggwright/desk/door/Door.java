package eggwright.desk.door;

import eggwright.desk.door.Verdict.Pass;
import eggwright.desk.door.Verdict.Reason;
import eggwright.desk.door.Verdict.Refused;
import java.util.Locale;
import java.util.Set;

/**
 * Lets in what came under the desk's own name, and writes only from the desk's own pages.
 *
 * <p>The name is checked because a page elsewhere can point a name of its own at this machine and so read it (DNS
 * rebinding). A write has to carry the desk's own Origin, and where the browser says where it came from
 * (Sec-Fetch-Site, W3C Fetch Metadata) that has to be the desk too; together they stop forms on other sites.
 */
public final class Door {
    private static final Set<String> READS = Set.of("GET", "HEAD");
    private static final Set<String> THIS_MACHINE = Set.of("127.0.0.1", "localhost", "[::1]");

    /** Where scripts send JSON. */
    private static final String API = "/api/";

    /**
     * Where a sensor sends readings. It is no browser and has no Origin; what lets it in is a token in a header that no
     * page elsewhere can make a browser send without leave, which the desk never gives. So nothing is forged there.
     */
    public static final String SENSORS = "/api/readings";

    /** Where a logger's file is sent: a form of this desk like any other, only longer. */
    public static final String FILES = "/readings/files";

    private final String scheme;
    private final String usualPort;
    private final Set<String> names;
    private final int port;
    private final long longestFormBytes;
    private final long longestBatchBytes;
    private final long longestFileBytes;

    private Door(
            String scheme,
            String usualPort,
            Set<String> names,
            int port,
            long longestFormBytes,
            long longestBatchBytes,
            long longestFileBytes) {
        this.scheme = scheme;
        this.usualPort = usualPort;
        this.names = names;
        this.port = port;
        this.longestFormBytes = longestFormBytes;
        this.longestBatchBytes = longestBatchBytes;
        this.longestFileBytes = longestFileBytes;
    }

    /**
     * The door to this machine itself, over http.
     *
     * @param port that the desk listens on
     * @param longestFormBytes the longest form that is read
     * @param longestBatchBytes the longest JSON that is read of a script
     * @param longestFileBytes the longest form with a logger's file in it
     */
    public static Door ofThisMachine(int port, long longestFormBytes, long longestBatchBytes, long longestFileBytes) {
        return new Door("http", "80", THIS_MACHINE, port, longestFormBytes, longestBatchBytes, longestFileBytes);
    }

    /**
     * The door to the network, over https.
     *
     * @param name the one that the desk answers to
     */
    public static Door ofNetwork(
            String name, int port, long longestFormBytes, long longestBatchBytes, long longestFileBytes) {
        return new Door("https", "443", Set.of(name), port, longestFormBytes, longestBatchBytes, longestFileBytes);
    }

    public Verdict judge(Knock knock) {
        var host = knock.host().orElse("").toLowerCase(Locale.ROOT);
        if (!isOwn(host)) {
            return new Refused(Reason.OTHER_NAME);
        }
        if (READS.contains(knock.method())) {
            return new Pass();
        }
        if (!knock.method().equals("POST")) {
            return new Refused(Reason.UNKNOWN_METHOD);
        }
        return judgeWrite(knock, host);
    }

    private Verdict judgeWrite(Knock knock, String host) {
        if (knock.path().equals(SENSORS)) {
            return knock.bodyBytes().isEmpty() ? new Refused(Reason.LENGTH_UNSAID) : new Pass();
        }
        var own = scheme + "://" + host;
        var fromHere = knock.origin().map(o -> o.equalsIgnoreCase(own)).orElse(false);
        var saysSo = knock.fetchSite().map(s -> s.equals("same-origin")).orElse(true);
        if (!fromHere || !saysSo) {
            return new Refused(Reason.FROM_ELSEWHERE);
        }
        if (knock.bodyBytes().isEmpty()) {
            return new Refused(Reason.LENGTH_UNSAID);
        }
        var ofScript = knock.path().startsWith(API);
        if (ofScript != isJson(knock.type().orElse(""))) {
            return new Refused(Reason.OTHER_KIND);
        }
        return knock.bodyBytes().get() > longest(knock.path()) ? new Refused(Reason.TOO_LARGE) : new Pass();
    }

    private long longest(String path) {
        if (path.equals(FILES)) {
            return longestFileBytes;
        }
        return path.startsWith(API) ? longestBatchBytes : longestFormBytes;
    }

    /** A form of another site can be sent as text or as a form, but as JSON only with leave of the desk, which it never gives. */
    private static boolean isJson(String type) {
        var end = type.indexOf(';');
        return (end < 0 ? type : type.substring(0, end)).strip().equalsIgnoreCase("application/json");
    }

    private boolean isOwn(String host) {
        var at = host.lastIndexOf(':');
        var hasPort = at > host.lastIndexOf(']');
        var name = hasPort ? host.substring(0, at) : host;
        var saidPort = hasPort ? host.substring(at + 1) : usualPort;
        return names.contains(name) && saidPort.equals(Integer.toString(port));
    }
}
