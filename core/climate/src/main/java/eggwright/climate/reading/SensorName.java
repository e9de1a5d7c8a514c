package eggwright.climate.reading;

import eggwright.units.OutOfRange;

/** What a farm calls one sensor. One to {@value #LONGEST} characters, trimmed, no control characters. */
public record SensorName(String text) implements Comparable<SensorName> {
    public static final int LONGEST = 80;

    /** Of a logger that writes no name of its own. */
    public static final SensorName ONLY = new SensorName("logger");

    public SensorName {
        text = text.strip();
        if (text.isEmpty() || text.length() > LONGEST || text.chars().anyMatch(Character::isISOControl)) {
            throw new OutOfRange("\"" + text + "\" is no name for a sensor. Write 1 to " + LONGEST
                    + " characters without line breaks.");
        }
    }

    @Override
    public int compareTo(SensorName other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
