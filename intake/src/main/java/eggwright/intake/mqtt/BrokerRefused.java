package eggwright.intake.mqtt;

import java.io.Serial;

/** The line was not made, for a reason that is known. */
final class BrokerRefused extends Exception {
    @Serial
    private static final long serialVersionUID = 1L;

    private final BrokerState.Why why;

    BrokerRefused(BrokerState.Why why, String detail) {
        super(detail);
        this.why = why;
    }

    BrokerState.Why why() {
        return why;
    }
}
