package eggwright.today.task;

/** What becomes of work whose day has passed. */
public enum Lateness {
    /** It stays, as overdue, until the book says that it was done. */
    OVERDUE,
    /** It can still be done for some days, and is then let go. */
    STILL_POSSIBLE,
    /** Its time is over. */
    LET_GO
}
