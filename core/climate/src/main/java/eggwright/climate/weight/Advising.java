package eggwright.climate.weight;

import eggwright.climate.air.SetPoint;
import eggwright.climate.air.Surroundings;
import eggwright.egg.air.MoistAir;
import eggwright.egg.loss.Compromise;
import eggwright.egg.loss.HumidityAdvice;
import eggwright.egg.loss.HumidityLine;
import eggwright.egg.loss.SafeLimits;
import eggwright.egg.shell.Diffusion;
import eggwright.units.Humidity;
import eggwright.units.OutOfRange;
import eggwright.units.Temperature;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * The humidity to run from now on, for each set in a machine and for all of them together. Air in the machine is taken to
 * stay as it is now, but for its humidity; eggs to be as warm as the air.
 *
 * <p>Limits: 30 to 70 %, beyond which keepers do not chase a loss (from memory). A set that the air as it is lands in its band
 * is left alone. Where the plain algebra is outside the limits, half of the way is gone, and the eggs weighed again in
 * three days (from memory).
 */
public final class Advising {
    public static final SafeLimits LIMITS = SafeLimits.of(30, 70);

    /** With less left, humidity hardly moves the loss any more: ours. */
    private static final double LEAST_DAYS = 0.5;
    /** No dial and no wick is read closer: ours. */
    private static final double SAME_POINTS = 1;

    private static final double MILLIS_PER_DAY = 86_400_000.0;

    private final SetPoint now;
    private final Surroundings surroundings;
    private final SafeLimits limits;
    private final Diffusion diffusion = Exposure.DIFFUSION;

    private Advising(SetPoint now, Surroundings surroundings, SafeLimits limits) {
        this.now = now;
        this.surroundings = surroundings;
        this.limits = limits;
    }

    /**
     * One set of the machine.
     *
     * @param until when it should have lost what its aim says
     * @param eggs still in
     */
    public record InMachine(SetLoss loss, Aim aim, Instant until, int eggs) {}

    /** @param air that the machine has now */
    public static MachineAdvice of(
            List<InMachine> sets, SetPoint air, Surroundings surroundings, SafeLimits limits, Instant at) {
        var advising = new Advising(air, surroundings, limits);
        var parties = new ArrayList<Party>();
        for (var set : sets) {
            double days = days(at, set.until());
            if (days >= LEAST_DAYS) {
                parties.add(new Party(set, days, advising.of(set, days)));
            }
        }
        return new MachineAdvice(parties.stream().map(Party::advice).toList(), advising.dial(parties));
    }

    /** A set with its own advice. */
    private record Party(InMachine set, double days, SetAdvice advice) {}

    private Dial dial(List<Party> parties) {
        if (parties.isEmpty()) {
            return new Dial.NothingLeft();
        }
        var weighed = parties.stream()
                .filter(party -> party.advice().step() != SetAdvice.Step.WEIGH_FIRST)
                .toList();
        if (weighed.isEmpty()) {
            return new Dial.WeighFirst();
        }
        if (weighed.stream().allMatch(party -> party.advice().step() == SetAdvice.Step.STAY)) {
            return new Dial.Leave(Dial.Leave.Why.ALL_LAND);
        }
        // One set alone may go half of the way; several meet in the middle as it is.
        var humidity = weighed.size() == 1
                ? weighed.getFirst().advice().run()
                : Compromise.of(weighed.stream().map(this::voice).toList(), limits)
                        .humidity();
        if (Math.abs(humidity.pct() - now.humidity().pct()) < SAME_POINTS) {
            return new Dial.Leave(Dial.Leave.Why.NEAR);
        }
        return new Dial.Turn(
                humidity,
                wetBulb(humidity),
                weighed.stream()
                        .map(party -> new Dial.Landing(
                                party.advice(), line(party.set(), party.days()).lossPct(humidity.pct())))
                        .toList());
    }

    private Compromise.Party voice(Party party) {
        var set = party.set();
        return new Compromise.Party(line(set, party.days()), set.aim().band().middlePct(), Math.max(1, set.eggs()));
    }

    private SetAdvice of(InMachine set, double days) {
        var line = line(set, days);
        var band = set.aim().band();
        double wanted = band.middlePct();
        double needed = line.humidityPct(wanted);
        var projected =
                set.loss().after(MoistAir.of(now.temperature(), now.humidity(), surroundings.barometer()), days);
        var advice = HumidityAdvice.of(line, set.loss().now().pct(), wanted, limits);
        var step = step(set, projected, advice);
        var run = switch (step) {
            case STAY, WEIGH_FIRST -> now.humidity();
            case TURN, OUT_OF_REACH -> advice.humidity();
            case HALF_WAY -> limits.halfWay(now.humidity(), needed);
        };
        return new SetAdvice(
                set.loss(),
                set.aim(),
                set.until(),
                days,
                projected,
                needed,
                projected.errorPct() / line.pctLessPerPoint(),
                advice,
                run,
                wetBulb(run),
                step);
    }

    private static SetAdvice.Step step(InMachine set, Estimate projected, HumidityAdvice advice) {
        if (set.loss().shells().from() != Shells.From.WEIGHED) {
            return SetAdvice.Step.WEIGH_FIRST;
        }
        var band = set.aim().band();
        if (projected.pct() >= band.lowPct() && projected.pct() <= band.highPct()) {
            return SetAdvice.Step.STAY;
        }
        return switch (advice) {
            case HumidityAdvice.Reachable reachable -> SetAdvice.Step.TURN;
            case HumidityAdvice.OutOfReach out -> {
                // The nearest safe humidity may still land it inside the band, though not in its middle.
                boolean isInBand = out.lossPct() >= band.lowPct() && out.lossPct() <= band.highPct();
                yield isInBand ? SetAdvice.Step.HALF_WAY : SetAdvice.Step.OUT_OF_REACH;
            }
        };
    }

    /** The final loss by humidity: a straight line. */
    private HumidityLine line(InMachine set, double days) {
        double share = 100 * set.loss().shells().share();
        double factor = diffusion.factor(new Diffusion.Conditions(surroundings.barometer(), now.temperature()));
        double saturation = MoistAir.of(now.temperature(), new Humidity(0), surroundings.barometer())
                .saturation()
                .kilopascals();
        double dry = set.loss().now().pct() + share * factor * saturation * days;
        return new HumidityLine(dry, share * factor * saturation * days / 100);
    }

    /** In the cold of a machine that has stood without heat a wick would freeze; it then shows the ice point. */
    private Temperature wetBulb(Humidity humidity) {
        try {
            return MoistAir.of(now.temperature(), humidity, surroundings.barometer())
                    .wetBulb(surroundings.ventilation());
        } catch (OutOfRange frozen) {
            return Temperature.ofCelsius(0);
        }
    }

    private static double days(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / MILLIS_PER_DAY;
    }
}
