package eggwright.invented.season;

import eggwright.invented.chance.Draw;
import eggwright.invented.chance.Streams;
import eggwright.invented.truth.LossTruth;
import eggwright.invented.truth.PenTruth;
import eggwright.invented.truth.Truth;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/** True levels in logits, by day of the season: trend, wandering, and what befell the pens. */
final class Levels {
    private static final int WEEKS = 60;

    private final Truth truth;
    private final double[] farmDrift;
    private final Map<Loss, double[]> lossDrift = new EnumMap<>(Loss.class);
    private final Map<String, double[]> penDrift = new HashMap<>();

    Levels(Truth truth, Streams streams) {
        this.truth = truth;
        this.farmDrift = walk(streams, truth.trend().driftSd(), "the farm");
        for (var loss : Loss.values()) {
            lossDrift.put(loss, walk(streams, truth.trend().lossDriftSd(), "the losses " + loss));
        }
        for (var pen : truth.pens()) {
            penDrift.put(pen.name(), walk(streams, pen.driftSd(), "pen " + pen.name()));
        }
    }

    private static double[] walk(Streams streams, double stepSd, String who) {
        var random = streams.of("drift", who);
        var path = new double[WEEKS];
        for (int week = 1; week < WEEKS; week++) {
            path[week] = path[week - 1] + stepSd * random.nextGaussian();
        }
        return path;
    }

    /** Fertility of the eggs that a pen lays on a day. */
    double fertility(PenTruth pen, int day) {
        int week = Math.clamp(day / 7, 0, WEEKS - 1);
        double own = penDrift.getOrDefault(pen.name(), farmDrift)[week];
        double befell = 0;
        for (var event : truth.events()) {
            if (event.pen().equals(pen.name())) {
                befell += event.logitOn(day);
            }
        }
        return Draw.logit(pen.fertilityPct() / 100)
                + truth.trend().fertilityPerWeek() * day / 7.0
                + farmDrift[week]
                + own
                + befell;
    }

    /** The stages of loss that change through the season. */
    enum Loss {
        EARLY,
        MID,
        LATE
    }

    /** A loss at a stage, for eggs set on a day. */
    double loss(Loss loss, LossTruth losses, int day) {
        var trend = truth.trend();
        double pct = switch (loss) {
            case EARLY -> losses.earlyPct();
            case MID -> losses.midPct();
            case LATE -> losses.latePct();
        };
        double perWeek = switch (loss) {
            case EARLY -> trend.earlyPerWeek();
            case MID -> trend.midPerWeek();
            case LATE -> trend.latePerWeek();
        };
        double wandered = lossDrift.getOrDefault(loss, farmDrift)[Math.clamp(day / 7, 0, WEEKS - 1)];
        return Draw.logit(pct / 100) + perWeek * day / 7.0 + wandered;
    }
}
