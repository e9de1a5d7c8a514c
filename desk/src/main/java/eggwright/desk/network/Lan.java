package eggwright.desk.network;

import eggwright.desk.joining.Devices;
import java.net.URI;

/**
 * The desk as devices on the farm's network reach it.
 *
 * @param name the one that it answers to
 * @param port for https; plain http on it tells how to get to https
 * @param devices who has joined
 */
public record Lan(DeskName name, int port, FarmAuthority authority, Devices devices) {
    /** Where devices find the desk. */
    public URI address() {
        return URI.create("https://" + host() + "/");
    }

    /** Where a device begins that does not trust the desk yet. */
    public URI firstSteps() {
        return URI.create("http://" + host() + "/");
    }

    private String host() {
        return name + ":" + port;
    }
}
