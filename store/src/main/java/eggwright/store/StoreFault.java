package eggwright.store;

/** The book cannot be opened, read or kept as asked. The message says what happened, what was kept and what to do. */
public final class StoreFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** What kind of fault; decides what a caller can do about it. */
    public enum Why {
        /** The folder has no book. */
        NO_BOOK,
        /** The book was made by a newer version. */
        NEWER_BOOK,
        /** The book was made by an older version and has not been opened for writing since. */
        OLDER_BOOK,
        /** The file is something else. */
        NOT_A_BOOK,
        /** Another program writes this book. */
        OTHER_WRITER,
        /** A file or a book is where something was to be written. */
        IN_THE_WAY,
        /** The place cannot be written: full, read-only or gone. */
        NOT_WRITABLE,
        /** The file is damaged, or a copy is not equal. */
        DAMAGED
    }

    private final Why why;

    StoreFault(Why why, String message) {
        super(message);
        this.why = why;
    }

    StoreFault(Why why, String message, Throwable cause) {
        super(message, cause);
        this.why = why;
    }

    public Why why() {
        return why;
    }
}
