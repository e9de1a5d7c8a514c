package eggwright.units;

/** Relative humidity of air over water, in percent. Range: 0 to 100. */
public record Humidity(double pct) {
    public Humidity {
        OutOfRange.check("Relative humidity", pct, 0, 100, "%");
    }

    /**
     * Reads {@code 55} or {@code 55%}.
     *
     * @throws OutOfRange if the text is not a number, or not one from 0 to 100
     */
    public static Humidity parse(String text) {
        double pct;
        try {
            pct = Double.parseDouble(text.replace("%", "").strip());
        } catch (NumberFormatException notANumber) {
            throw new OutOfRange(
                    QuantityReason.NOT_A_HUMIDITY,
                    "\"" + text + "\" is not a humidity. Write a number from 0 to 100, such as 55.",
                    text);
        }
        return new Humidity(pct);
    }
}
