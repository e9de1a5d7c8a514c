package eggwright.desk.machine;

import eggwright.climate.air.SetPoint;
import eggwright.climate.air.Surroundings;
import eggwright.climate.machine.MachineNow;
import eggwright.climate.machine.SetInside;
import eggwright.climate.rollup.Band;
import eggwright.climate.weight.Advising;
import eggwright.climate.weight.Aim;
import eggwright.climate.weight.SetAdvice;
import eggwright.climate.weight.SetAdvice.Step;
import eggwright.trade.LossTarget;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Between which humidities, run from now on, everything that was weighed in a machine lands in its own band of loss. */
final class LandingBand {
    private final MachineNow now;
    private final Surroundings surroundings;
    private final Instant at;

    LandingBand(MachineNow now, Surroundings surroundings, Instant at) {
        this.now = now;
        this.surroundings = surroundings;
        this.at = at;
    }

    /** In percent, inside what is safe; empty where nothing was weighed, or no one humidity does it for all. */
    Optional<Band> humidities() {
        double low = Advising.LIMITS.low().pct();
        double high = Advising.LIMITS.high().pct();
        boolean hasWeighed = false;
        for (var advice : now.advice().sets()) {
            if (advice.step() != Step.WEIGH_FIRST) {
                hasWeighed = true;
                // The more it should lose, the drier the air.
                low = Math.max(low, needed(advice, advice.aim().band().highPct()));
                high = Math.min(high, needed(advice, advice.aim().band().lowPct()));
            }
        }
        return hasWeighed && low < high ? Optional.of(new Band(low, high)) : Optional.empty();
    }

    /** The humidity that gives one final loss. */
    private double needed(SetAdvice advice, double lossPct) {
        var band = advice.aim().band();
        var aim = new Aim(
                new LossTarget(lossPct, lossPct, band.byDay(), band.note()),
                advice.aim().source(),
                advice.aim().bestSets());
        var air = now.air().air();
        return Advising.of(
                        List.of(new Advising.InMachine(advice.loss(), aim, advice.until(), eggs(advice))),
                        new SetPoint(air.temperature(), air.humidity()),
                        surroundings,
                        Advising.LIMITS,
                        at)
                .sets()
                .getFirst()
                .neededPct();
    }

    private int eggs(SetAdvice advice) {
        return now.sets().stream()
                .filter(set -> set.loss().equals(advice.loss()))
                .mapToInt(SetInside::eggs)
                .findFirst()
                .orElse(1);
    }
}
