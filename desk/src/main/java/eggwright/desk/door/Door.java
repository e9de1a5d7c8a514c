package eggwright.desk.door;

import eggwright.desk.door.Verdict.Pass;
import eggwright.desk.door.Verdict.Reason;
import eggwright.desk.door.Verdict.Refused;
import java.util.Locale;
import java.util.Set;

/**
 * Lets in what came to this machine under its own name, and writes only from the desk's own pages.
 *
 * <p>The name is checked because a page elsewhere can point a name of its own at this machine and so read it (DNS
 * rebinding). A write has to carry the desk's own Origin, and where the browser says where it came from
 * (Sec-Fetch-Site, W3C Fetch Metadata) that has to be the desk too; together they stop forms on other sites.
 */
public final class Door {
    private static final Set<String> READS = Set.of("GET", "HEAD");
    private static final Set<String> OWN_NAMES = Set.of("127.0.0.1", "localhost", "[::1]");

    private final int port;
    private final long longestBodyBytes;

    /**
     * @param port that the desk listens on
     * @param longestBodyBytes the longest form that is read
     */
    public Door(int port, long longestBodyBytes) {
        this.port = port;
        this.longestBodyBytes = longestBodyBytes;
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
        var own = "http://" + host;
        var fromHere = knock.origin().map(o -> o.equalsIgnoreCase(own)).orElse(false);
        var saysSo = knock.fetchSite().map(s -> s.equals("same-origin")).orElse(true);
        if (!fromHere || !saysSo) {
            return new Refused(Reason.FROM_ELSEWHERE);
        }
        if (knock.bodyBytes().isEmpty()) {
            return new Refused(Reason.LENGTH_UNSAID);
        }
        return knock.bodyBytes().get() > longestBodyBytes ? new Refused(Reason.TOO_LARGE) : new Pass();
    }

    private boolean isOwn(String host) {
        var at = host.lastIndexOf(':');
        var hasPort = at > host.lastIndexOf(']');
        var name = hasPort ? host.substring(0, at) : host;
        var saidPort = hasPort ? host.substring(at + 1) : "80";
        return OWN_NAMES.contains(name) && saidPort.equals(Integer.toString(port));
    }
}
