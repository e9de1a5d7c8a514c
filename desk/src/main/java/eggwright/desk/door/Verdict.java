package eggwright.desk.door;

/** What the door says of a request. */
public sealed interface Verdict {
    /** May go on to its page. */
    record Pass() implements Verdict {}

    /** Stays outside. */
    record Refused(Reason why) implements Verdict {}

    /** Why a request stays outside, with the HTTP status that says so. */
    enum Reason {
        /** Only reading and keeping are known here. */
        UNKNOWN_METHOD(405),
        /** Asked for under a name that is not this machine's own: a web page elsewhere may be behind it. */
        OTHER_NAME(421),
        /** A write that did not come from a page of this desk. */
        FROM_ELSEWHERE(403),
        /** A write that does not say how long it is. */
        LENGTH_UNSAID(411),
        /** A write longer than any form of this desk. */
        TOO_LARGE(413),
        /** A write of another kind than its address takes: a form where a script sends JSON, or the other way about. */
        OTHER_KIND(415);

        private final int status;

        Reason(int status) {
            this.status = status;
        }

        public int status() {
            return status;
        }
    }
}
