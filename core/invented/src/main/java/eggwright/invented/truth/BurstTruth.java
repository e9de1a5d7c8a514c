package eggwright.invented.truth;

/**
 * A rotten egg bursts in a tray and spoils others near it.
 *
 * @param trayPct share of trays in which one bursts
 * @param neighbours how many others it spoils on average
 */
public record BurstTruth(double trayPct, double neighbours) {
    public static final BurstTruth PLAIN = new BurstTruth(0, 6);

    public BurstTruth {
        Within.pct("tray_pct", trayPct);
        Within.range("neighbours", neighbours, 0, 200);
    }
}
