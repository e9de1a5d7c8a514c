package eggwright.book.entry;

/** Why an egg was not kept for setting. The handbook reasons: cracked, stained or dirty, misshapen, thin or soft, size. */
public enum RejectReason {
    CRACKED("cracked"),
    DIRTY("dirty"),
    MISSHAPEN("misshapen"),
    THIN_OR_SOFT("thin_or_soft"),
    TOO_SMALL("too_small"),
    TOO_LARGE("too_large"),
    FROZEN("frozen"),
    OTHER("other");

    private final String word;

    RejectReason(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
