package eggwright.invented.truth;

import eggwright.book.entry.MachineKind;

/**
 * A machine. A setter's places are shared out evenly over its sections.
 *
 * @param trayPlaces trays or baskets it holds
 */
public record MachineTruth(String name, MachineKind does, int trayPlaces) {
    public static final MachineTruth PLAIN = new MachineTruth("Setter", MachineKind.SETTER, 40);

    public MachineTruth {
        name = new eggwright.book.name.MachineName(name).text();
        Within.range("tray_places", trayPlaces, 1, 100_000);
    }
}
