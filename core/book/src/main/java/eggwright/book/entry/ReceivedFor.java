package eggwright.book.entry;

/** Why eggs came from elsewhere. */
public enum ReceivedFor {
    BOUGHT_IN,
    /** A customer's eggs, set for them. */
    CUSTOMER
}
