package eggwright.book.entry;

import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.units.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A tray or marked eggs on the scale.
 *
 * @param gross what the scale showed
 * @param tare the empty tray; absent where the scale was set to nought with it
 */
public record Weighed(
        SetName set,
        TrayName tray,
        WeighedWhat what,
        Mass gross,
        @Nullable Mass tare,
        int eggs) implements Payload {
    public Weighed {
        Checks.atLeast("Eggs weighed", eggs, 1);
        Checks.count("Eggs weighed", eggs);
    }
}
