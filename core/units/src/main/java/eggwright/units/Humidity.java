package eggwright.units;

/** Relative humidity of air over water, in percent. Range: 0 to 100. */
public record Humidity(double pct) {
    public Humidity {
        OutOfRange.check("Relative humidity", pct, 0, 100, "%");
    }

    /**
     * Reads {@code 50} or {@code 50%}: relative humidity has one unit only, so it may be left out.
     *
     * @throws OutOfRange if the text is not a number of 0 to 100, or has another unit
     */
    public static Humidity parse(String text) {
        var typed = TypedNumber.read(text);
        if (typed.isEmpty()) {
            throw new OutOfRange(
                    QuantityReason.NOT_A_HUMIDITY, "\"" + text + "\" is not a humidity. Write 50 or 50%.", text);
        }
        if (!typed.get().unit().isEmpty() && !typed.get().unit().equals("%")) {
            throw new OutOfRange(
                    QuantityReason.NOT_A_HUMIDITY,
                    "\"" + text + "\" has a unit that is not %. Write 50 or 50%, the relative humidity.",
                    text);
        }
        return new Humidity(typed.get().number());
    }

    /** Share of what the air could hold, 0 to 1. */
    public double share() {
        return pct / 100;
    }
}
