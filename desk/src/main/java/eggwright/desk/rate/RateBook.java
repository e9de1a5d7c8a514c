package eggwright.desk.rate;

import eggwright.desk.live.LiveBook;
import eggwright.desk.live.WorkedOut;
import eggwright.desk.picture.IntervalPlot;
import eggwright.rates.Dimension;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The rates of the farm by anything, each worked out once for each change of the book. */
public final class RateBook {
    private final Map<Dimension, WorkedOut<RatesOf>> worked = new EnumMap<>(Dimension.class);

    public RateBook(LiveBook book) {
        for (var by : Dimension.values()) {
            worked.put(by, new WorkedOut<>(book, now -> RatesOf.of(now.picture(), by)));
        }
    }

    RatesOf by(Dimension by) {
        return Objects.requireNonNull(worked.get(by)).get();
    }

    /** Whether there is a group of this key. */
    public boolean knows(Dimension by, String key) {
        return by(by).report().groups().stream().anyMatch(g -> g.key().equals(key));
    }

    /** Fertility side by side, in the figure that all have in common; empty where none was seen. */
    public Optional<IntervalPlot> fertility(Dimension by, Locale language) {
        return ComparisonPlot.of(by(by).fertility(), "fertility", language);
    }

    /** Hatch of fertile side by side; empty where nothing was taken off. */
    public Optional<IntervalPlot> hatch(Dimension by, Locale language) {
        return ComparisonPlot.of(by(by).hatch(), "hatch", language);
    }
}
