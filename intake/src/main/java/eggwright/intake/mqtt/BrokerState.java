package eggwright.intake.mqtt;

import java.time.Instant;

/** How it stands with a broker. */
public sealed interface BrokerState {
    /** On the way to it for the first time. */
    record Beginning() implements BrokerState {}

    /** Whatever sensors send there arrives. */
    record Listening(Instant since) implements BrokerState {}

    /**
     * It is not reached, and asked again and again.
     *
     * @param detail in the words of the library or the machine; for whoever looks into it
     * @param tries in a row that failed
     * @param next when it is asked again
     */
    record Away(Why why, String detail, Instant since, int tries, Instant next) implements BrokerState {}

    /** Why a broker is not reached. */
    enum Why {
        /** No such host, or nothing answers there. */
        NOT_REACHED,
        /** Its certificate is not of an authority that is trusted, or not of that name. */
        NOT_TRUSTED,
        /** It does not take the user or the password. */
        NOT_LET_IN,
        /** It does not let this user listen to the topic. */
        TOPIC_REFUSED,
        /** It was there, and then the line broke. */
        LOST,
        /** Anything else. */
        OTHER
    }
}
