package eggwright.desk;

/** The desk could not listen on its port. The message says so to a person. */
public final class DeskNotOpened extends RuntimeException {
    private static final long serialVersionUID = 1L;

    DeskNotOpened(int port, Throwable cause) {
        super(
                "Port " + port + " of this machine is taken, perhaps by another desk. Nothing was changed. "
                        + "Close the other, or choose another port; 0 takes any that is free.",
                cause);
    }
}
