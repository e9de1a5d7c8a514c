package eggwright.book.picture;

/** In which way entries contradict each other. Kept and shown, for a person to settle. */
public enum DiscrepancyKind {
    /** A count from before the set went in. */
    BEFORE_THE_SET("before_the_set"),
    /** A count names a tray, basket or set that the book does not know. */
    UNKNOWN_LOAD("unknown_load"),
    /** The same tray filled twice in one set. */
    TRAY_TWICE("tray_twice"),
    /** More eggs taken out than were there. */
    MORE_OUT_THAN_IN("more_out_than_in"),
    /** A look counts more eggs than were there. */
    MORE_SEEN_THAN_IN("more_seen_than_in"),
    /** The book says one number, the person counted another. */
    COUNT_DIFFERS("count_differs"),
    /** Fewer eggs transferred than the book holds. */
    LEFT_AT_TRANSFER("left_at_transfer"),
    /** More eggs opened than there were to open. */
    OPENED_MORE_THAN_THERE("opened_more_than_there"),
    /** Opened, but no class was named. */
    OPENED_WITHOUT_CLASS("opened_without_class"),
    /** More eggs left the egg room than were gathered. */
    EGG_ROOM_SHORT("egg_room_short"),
    EGG_ROOM_COUNT_DIFFERS("egg_room_count_differs"),
    /** More birds left a pen than were in it. */
    PEN_SHORT("pen_short"),
    /** More chicks died or were sold than had been placed. */
    CHICKS_SHORT("chicks_short"),
    /** Two people mended the same entry without seeing each other's mend; the later id shows. */
    TWO_MENDS("two_mends"),
    /** A mend whose entry has not arrived. */
    MEND_WAITS("mend_waits"),
    /** Mends that point at each other; none of them counts. */
    MENDS_IN_A_CIRCLE("mends_in_a_circle"),
    /** A delivery or cancellation names an order that is not in the book. */
    UNKNOWN_ORDER("unknown_order"),
    /** A figure for a species that is not one. */
    UNKNOWN_KIND("unknown_kind");

    private final String word;

    DiscrepancyKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
