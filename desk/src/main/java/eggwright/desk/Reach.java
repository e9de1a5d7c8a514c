package eggwright.desk;

import eggwright.desk.network.Lan;
import java.net.URI;
import java.util.Optional;

/** Who can reach a desk. */
public sealed interface Reach {
    /** Nothing but the machine that it runs on. */
    record ThisMachine() implements Reach {}

    /** Devices on the farm's network too, each of which has to join. */
    record Network(Lan lan) implements Reach {}

    /** Where devices find the desk; empty where they cannot. */
    default Optional<URI> address() {
        return switch (this) {
            case ThisMachine only -> Optional.empty();
            case Network(var lan) -> Optional.of(lan.address());
        };
    }
}
