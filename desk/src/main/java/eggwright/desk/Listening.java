package eggwright.desk;

import io.javalin.http.Context;

/**
 * By which way a request came. Told by the address and port that it came in on and by its encryption, never by what it
 * says of itself; whatever is not plainly this machine's own is the network's.
 */
enum Listening {
    /** Over the machine's own loopback. */
    THIS_MACHINE,
    /** From the network, encrypted. */
    NETWORK,
    /** From the network, in the open. */
    IN_THE_OPEN;

    static Listening of(Context ctx, Reach reach) {
        return switch (reach) {
            case Reach.ThisMachine only -> THIS_MACHINE;
            case Reach.Network(var lan) -> {
                var request = ctx.req();
                if (request.getLocalPort() != lan.port()
                        && request.getLocalAddr().equals(Desk.THIS_MACHINE)) {
                    yield THIS_MACHINE;
                }
                yield request.isSecure() ? NETWORK : IN_THE_OPEN;
            }
        };
    }
}
