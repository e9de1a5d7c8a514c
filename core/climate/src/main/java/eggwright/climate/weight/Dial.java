package eggwright.climate.weight;

import eggwright.units.Humidity;
import eggwright.units.Temperature;
import java.util.List;

/**
 * What to do with the dial of a machine. Only sets whose own eggs were weighed twice have a voice: a habit that works is
 * never set against a table.
 */
public sealed interface Dial {
    /** No set has days left before its band. */
    record NothingLeft() implements Dial {}

    /** Nobody weighed the eggs; the dial is left where it is. */
    record WeighFirst() implements Dial {}

    /**
     * As it is.
     *
     * @param why all land, or the wanted air is so near that no dial is read closer
     */
    record Leave(Why why) implements Dial {
        /** Why it is left. */
        public enum Why {
            ALL_LAND,
            NEAR
        }
    }

    /**
     * To another humidity.
     *
     * @param wetBulb at that humidity
     * @param landings what each weighed set will have lost then
     */
    record Turn(Humidity humidity, Temperature wetBulb, List<Landing> landings) implements Dial {
        public Turn {
            landings = List.copyOf(landings);
        }
    }

    /** One set, and what it will have lost when its band is reached, in percent of its set mass. */
    record Landing(SetAdvice advice, double lossPct) {}
}
