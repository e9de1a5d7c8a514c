package eggwright.desk;

/** The desk could not listen on its ports. The message says so to a person. */
public final class DeskNotOpened extends RuntimeException {
    private static final long serialVersionUID = 1L;

    DeskNotOpened(Setup setup, Throwable cause) {
        super(
                ports(setup) + " taken, perhaps by another desk. Nothing was changed. "
                        + "Close the other, or choose another port; 0 takes any that is free.",
                cause);
    }

    private static String ports(Setup setup) {
        return switch (setup.reach()) {
            case Reach.ThisMachine only -> "Port " + setup.port() + " of this machine is";
            case Reach.Network(var lan) -> "Port " + setup.port() + " or port " + lan.port() + " of this machine is";
        };
    }
}
