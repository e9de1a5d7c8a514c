package eggwright.book.entry;

/** What was found in order on a daily round. */
public enum RoundCheck {
    WATER_FILLED,
    TURNER_TILTED,
    VENTS_OPEN
}
