package eggwright.desk.device;

import java.util.List;

/**
 * All devices, and how another joins.
 *
 * @param message what could not be done; empty where nothing was refused
 * @param address of the desk on the network; empty where it has none
 * @param in those that may ask something
 * @param out those that were let go, or whose time has ended
 * @param roles that can be given, the usual one first
 * @param passphrase what there is to say of the owner's
 * @param canSetPassphrase the path to set it; empty for whoever may not from here
 */
public record DevicesPage(
        String message,
        String address,
        List<Row> in,
        List<Row> out,
        List<Choice> roles,
        String passphrase,
        String canSetPassphrase) {
    /**
     * One device.
     *
     * @param isYou said of the device that asks; else empty
     * @param changePath where its role is changed; empty where it has none to change
     */
    public record Row(
            String name,
            String role,
            String joined,
            String seen,
            String isYou,
            String changePath,
            String letGoPath,
            List<Choice> roles) {}

    /** One role, with what it may do. */
    public record Choice(String word, String label, String may, boolean chosen) {}
}
