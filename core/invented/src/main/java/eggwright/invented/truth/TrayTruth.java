package eggwright.invented.truth;

/**
 * How trays are filled.
 *
 * @param eggs places in a tray
 * @param perSet the most trays that go in together
 * @param fewest a pen's eggs that fill less than this of a tray wait for the next set
 * @param mixedPct how often what is left of two pens shares a tray, not told apart
 * @param pooledBelow trays with fewer eggs than this after the first look are pooled; 0: never
 */
public record TrayTruth(int eggs, int perSet, int fewest, double mixedPct, int pooledBelow) {
    public static final TrayTruth PLAIN = new TrayTruth(54, 12, 14, 60, 22);

    public TrayTruth {
        Within.range("eggs", eggs, 1, 1000);
        Within.range("per_set", perSet, 1, 10_000);
        Within.range("fewest", fewest, 1, 1000);
        Within.pct("mixed_pct", mixedPct);
        Within.range("pooled_below", pooledBelow, 0, 1000);
    }
}
