package eggwright.store;

/** The book cannot be opened, read or kept as asked. The message says what happened, what was kept and what to do. */
public final class StoreFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public StoreFault(String message) {
        super(message);
    }

    public StoreFault(String message, Throwable cause) {
        super(message, cause);
    }
}
