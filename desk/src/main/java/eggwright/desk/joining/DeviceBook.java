package eggwright.desk.joining;

import eggwright.desk.who.Role;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Where devices, codes and the passphrase are kept. No token or code is ever given to it, only their hashes. */
public interface DeviceBook {
    /** A code by which one device may join. */
    record Code(String sha256, Role role, Instant made, Instant ends) {}

    /** All that ever joined, by when they did. */
    List<Device> all();

    /** Keeps a device in the place of what was kept of it before. */
    void keep(Device device);

    /** Keeps a code, and forgets those that have ended. */
    void keep(Code code);

    /** How many codes could be used at this time. */
    int codesAt(Instant now);

    /** Takes a code out of the book: whoever gets it is the only one who does. */
    Optional<Code> take(String sha256);

    /** The hash of the owner's passphrase; empty where none was set. */
    Optional<String> passphrase();

    void keepPassphrase(String hash, Instant set);
}
