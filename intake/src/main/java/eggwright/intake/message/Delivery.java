package eggwright.intake.message;

/** How a message came: only one that came at once tells of now. */
public enum Delivery {
    /** Sent just now. */
    LIVE,
    /** Held by a broker for whoever comes later (MQTT 3.1.1, section 3.3.1.3): it may be of any time. */
    RETAINED,
    /** Sent once more because it was not acknowledged (section 3.3.1.1): it may be known already. */
    REPEATED
}
