package eggwright.desk.device;

/**
 * Where the owner signs in and out.
 *
 * @param now who this device is
 * @param name asked where it has none yet
 * @param message what is to be mended; empty where nothing is
 */
public record SignInPage(String now, State state, Naming naming, String name, String message) {
    /** What can be done here. */
    public enum State {
        /** Sign in. */
        OUT,
        /** Sign out. */
        IN,
        /** Neither: this is the owner's already, as the desk's own machine is. */
        HERE
    }

    /** Whether the device has to be named. */
    public enum Naming {
        HAS_A_NAME,
        WANTS_A_NAME
    }
}
