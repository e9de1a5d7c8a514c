package eggwright.desk.network;

/** The authority's files could not be used. The message says so to a person. */
public final class KeysRefused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    KeysRefused(String message) {
        super(message);
    }

    KeysRefused(String message, Throwable cause) {
        super(message, cause);
    }
}
