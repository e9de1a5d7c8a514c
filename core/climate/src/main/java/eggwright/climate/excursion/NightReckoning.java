package eggwright.climate.excursion;

import eggwright.climate.development.DevelopmentRate;
import eggwright.climate.development.Span;
import eggwright.climate.development.ThermalLag;
import eggwright.climate.development.Warmth;
import eggwright.trade.HarmRule;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Reckons what eggs felt while the air was wrong, and what follows. How fast they follow the air is hardly known, so it is
 * reckoned three times: for a few eggs, for a full machine, and for the slowest thinkable. The truth lies between.
 */
public final class NightReckoning {
    private static final double MILLIS_PER_HOUR = 3_600_000.0;

    private NightReckoning() {}

    /**
     * @param air from before the night until the eggs are warm again, without gaps
     * @param referenceCelsius what the eggs should have
     * @param developed how far they had come, 0 to 1
     */
    public static NightCost of(List<Warmth> air, Excursion.Kind kind, double referenceCelsius, double developed) {
        var few = ThermalLag.FEW_EGGS.felt(air);
        var full = ThermalLag.FULL_MACHINE.felt(air);
        var slowest = ThermalLag.SLOWEST.felt(air);
        double quick = extreme(few, kind);
        double likely = extreme(full, kind);
        double slow = extreme(slowest, kind);
        var rules = new LinkedHashSet<HarmRule>();
        double high = harm(few, developed, rules, End.HIGH);
        double low = harm(slowest, developed, new LinkedHashSet<>(), End.LOW);
        return new NightCost(
                kind == Excursion.Kind.COLD ? new Span(quick, likely, slow) : new Span(slow, likely, quick),
                later(few, full, slowest, referenceCelsius, developed),
                Math.min(low, high),
                high,
                List.copyOf(rules));
    }

    private enum End {
        LOW,
        HIGH
    }

    private static double extreme(List<Warmth> felt, Excursion.Kind kind) {
        var all = felt.stream().mapToDouble(Warmth::celsius);
        return kind == Excursion.Kind.COLD ? all.min().orElse(0) : all.max().orElse(0);
    }

    /** The worst that any rule says of the time spent in its range. */
    private static double harm(List<Warmth> felt, double developed, Set<HarmRule> used, End end) {
        double worst = 0;
        for (var rule : HarmRule.all()) {
            if (!rule.isOfAge(developed)) {
                continue;
            }
            double hours = felt.stream()
                    .filter(w -> rule.isOfTemperature(w.celsius()))
                    .mapToDouble(NightReckoning::hours)
                    .sum();
            if (rule.isOfLength(hours)) {
                double says = end == End.LOW ? rule.lowPct() : rule.highPct();
                worst = Math.max(worst, says);
                used.add(rule);
            }
        }
        return worst;
    }

    private static Span later(
            List<Warmth> few, List<Warmth> full, List<Warmth> slowest, double reference, double developed) {
        var ends = new ArrayList<Double>();
        for (var felt : List.of(few, full, slowest)) {
            double fast = 0;
            double slow = 0;
            for (var piece : felt) {
                var rate = rate(piece, reference, developed);
                fast += hours(piece) * (1 - rate.high());
                slow += hours(piece) * (1 - rate.low());
            }
            ends.add(fast);
            ends.add(slow);
        }
        double likely = full.stream()
                .mapToDouble(p -> hours(p) * (1 - rate(p, reference, developed).likely()))
                .sum();
        return new Span(
                ends.stream().mapToDouble(Double::doubleValue).min().orElse(0),
                likely,
                ends.stream().mapToDouble(Double::doubleValue).max().orElse(0));
    }

    private static Span rate(Warmth piece, double reference, double developed) {
        return DevelopmentRate.at(Math.clamp(piece.celsius(), 0, 60), reference, developed);
    }

    private static double hours(Warmth piece) {
        return Duration.between(piece.from(), piece.to()).toMillis() / MILLIS_PER_HOUR;
    }
}
