package eggwright.climate.weight;

import eggwright.book.name.SetName;
import eggwright.climate.air.AirHour;
import eggwright.egg.loss.ShellFit;
import eggwright.egg.loss.ShellSample;
import eggwright.trade.Species;
import eggwright.units.Mass;
import eggwright.units.OutOfRange;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Works out what a set has lost from the weighings of its trays and from the air that it had.
 *
 * <p>Each series of weighings gives the leakiness of its shells (least squares through its first weighing). Trays are put
 * together by how sure each is: the scale, and which eggs were on it, for shells differ by 15 % between eggs (MEIR1984). Where trays differ by more
 * than that the whole is that much less sure (the square root of chi squared a degree of freedom). What is known without these weighings
 * counts as one tray more. A series that begins after the set is reckoned back through the same shells.
 */
public final class LossReckoning {
    /** A first weighing within so long of the set stands for the set mass. */
    private static final Duration AT_SET = Duration.ofHours(12);

    /** Trays weighed within so long are one weighing: ours. */
    private static final Duration ONE_WEIGHING = Duration.ofHours(12);

    /** More than three times what the leakiest shells of the guess let out is a slip: ours. */
    private static final double MOST_OF_GUESS = 3;

    private static final double MILLIGRAMS = 1000;

    private final Instant set;
    private final Exposure exposure;
    private final Shells before;
    private final List<Oddity> oddities = new ArrayList<>();

    private LossReckoning(Instant set, List<AirHour> air, Shells before) {
        this.set = set;
        this.exposure = new Exposure(air);
        this.before = before;
    }

    /** One tray's say. */
    private record Fitted(MassSeries series, double share, double error, double setGrams) {}

    /**
     * @param air without gaps from the set to now
     * @param before what is known of the shells without these weighings
     */
    public static SetLoss of(
            SetName name,
            Species species,
            Instant set,
            Instant now,
            List<MassSeries> weighed,
            List<AirHour> air,
            Shells before) {
        return new LossReckoning(set, air, before).reckon(name, species, now, weighed);
    }

    private SetLoss reckon(SetName name, Species species, Instant now, List<MassSeries> weighed) {
        var sound = weighed.stream().map(this::sound).toList();
        var fitted = sound.stream().map(this::fit).flatMap(Optional::stream).toList();
        var shells = together(fitted);
        var measured = measured(fitted);
        var reckoned = now(measured, shells, now);
        int eggs = fitted.stream()
                .mapToInt(f -> f.series().masses().getLast().eggs())
                .sum();
        return new SetLoss(name, species, eggs, measured, shells, reckoned, oddities);
    }

    /** Leaves out weighings that cannot be. */
    private MassSeries sound(MassSeries series) {
        var masses = new ArrayList<MeanMass>();
        for (var mass : series.masses()) {
            var what = odd(masses, mass);
            if (what.isPresent()) {
                oddities.add(new Oddity(series.tray(), mass.at(), what.get()));
            } else {
                masses.add(mass);
            }
        }
        return new MassSeries(series.set(), series.tray(), series.what(), masses);
    }

    private Optional<Oddity.What> odd(List<MeanMass> before, MeanMass mass) {
        if (!(mass.grams() > 0)) {
            return Optional.of(Oddity.What.NOTHING_LEFT);
        }
        if (before.isEmpty()) {
            return Optional.empty();
        }
        var last = before.getLast();
        double lost = last.grams() - mass.grams();
        double error = Math.hypot(last.errorGrams(), mass.errorGrams());
        if (lost < -2 * error) {
            return Optional.of(Oddity.What.GAINED);
        }
        double most = MOST_OF_GUESS
                * (this.before.share() + this.before.error())
                * last.grams()
                * (exposure.at(mass.at()) - exposure.at(last.at()));
        return lost - 2 * error > most ? Optional.of(Oddity.What.LOST_TOO_MUCH) : Optional.empty();
    }

    private Optional<Fitted> fit(MassSeries series) {
        if (series.masses().size() < 2) {
            return Optional.empty();
        }
        var first = series.masses().getFirst();
        double start = exposure.at(first.at());
        var weighings = new ArrayList<ShellFit.Weighing>();
        for (var mass : series.masses()) {
            double since = exposure.at(mass.at()) - start;
            if (weighings.isEmpty() || since > 0) {
                weighings.add(new ShellFit.Weighing(Mass.ofGrams(mass.grams()), mass.errorGrams(), since));
            }
        }
        try {
            var fit = ShellFit.of(weighings);
            double grams = fit.conductance().milligramsPerDayKilopascal() / MILLIGRAMS;
            boolean isAtSet = Duration.between(set, first.at()).compareTo(AT_SET) <= 0;
            double setGrams = first.grams() + (isAtSet ? 0 : grams * start);
            double share = grams / setGrams;
            double scale = fit.standardErrorMilligrams() / MILLIGRAMS / setGrams;
            double shells = ShellSample.SHELL_VARIATION
                    * share
                    / Math.sqrt(series.masses().getLast().eggs());
            return Optional.of(new Fitted(series, share, Math.hypot(scale, shells), setGrams));
        } catch (OutOfRange nothingLost) {
            // Two weighings of one day: nothing to learn yet.
            return Optional.empty();
        }
    }

    private Shells together(List<Fitted> fitted) {
        if (fitted.isEmpty()) {
            return before;
        }
        double weights = 0;
        double sum = 0;
        for (var one : fitted) {
            weights += weight(one.error());
            sum += weight(one.error()) * one.share();
        }
        double mean = sum / weights;
        double squares = 0;
        for (var one : fitted) {
            squares += weight(one.error()) * (one.share() - mean) * (one.share() - mean);
        }
        double scatter = fitted.size() > 1 ? Math.max(1, Math.sqrt(squares / (fitted.size() - 1))) : 1;
        double own = weight(scatter / Math.sqrt(weights));
        double known = weight(before.error());
        return new Shells(
                (own * mean + known * before.share()) / (own + known), 1 / Math.sqrt(own + known), Shells.From.WEIGHED);
    }

    private static double weight(double error) {
        return 1 / (error * error);
    }

    /** What the scale said, weighing by weighing; trays count by their eggs. */
    private List<SetLoss.Measured> measured(List<Fitted> fitted) {
        var says = new ArrayList<Say>();
        for (var one : fitted) {
            var masses = one.series().masses();
            for (var mass : masses) {
                if (!mass.equals(masses.getFirst())
                        || Duration.between(set, mass.at()).compareTo(AT_SET) > 0) {
                    says.add(say(one, mass));
                }
            }
        }
        says.sort(Comparator.comparing(Say::at));
        var measured = new ArrayList<SetLoss.Measured>();
        var together = new ArrayList<Say>();
        for (var say : says) {
            // Trays of one evening are one weighing, on whichever side of midnight.
            if (!together.isEmpty()
                    && Duration.between(together.getFirst().at(), say.at()).compareTo(ONE_WEIGHING) > 0) {
                measured.add(put(together));
                together.clear();
            }
            together.add(say);
        }
        if (!together.isEmpty()) {
            measured.add(put(together));
        }
        return measured;
    }

    private record Say(Instant at, double pct, double errorPct, int eggs) {}

    private static Say say(Fitted one, MeanMass mass) {
        double pct = 100 * (1 - mass.grams() / one.setGrams());
        double first = one.series().masses().getFirst().errorGrams() / one.setGrams();
        double now = mass.errorGrams() / one.setGrams();
        double shells = ShellSample.SHELL_VARIATION * pct / 100 / Math.sqrt(mass.eggs());
        return new Say(mass.at(), pct, 100 * Math.hypot(Math.hypot(first, now), shells), mass.eggs());
    }

    private static SetLoss.Measured put(List<Say> says) {
        int eggs = says.stream().mapToInt(Say::eggs).sum();
        double pct = 0;
        double variance = 0;
        var last = says.getFirst().at();
        for (var say : says) {
            double part = (double) say.eggs() / eggs;
            pct += part * say.pct();
            variance += part * part * say.errorPct() * say.errorPct();
            last = say.at().isAfter(last) ? say.at() : last;
        }
        return new SetLoss.Measured(last, Estimate.of(pct, Math.sqrt(variance)), eggs);
    }

    private Estimate now(List<SetLoss.Measured> measured, Shells shells, Instant now) {
        if (measured.isEmpty()) {
            double since = exposure.at(now);
            return Estimate.of(100 * shells.share() * since, 100 * shells.error() * since);
        }
        var last = measured.getLast();
        double since = exposure.at(now) - exposure.at(last.at());
        return Estimate.of(
                last.loss().pct() + 100 * shells.share() * since,
                last.loss().errorPct() + 100 * shells.error() * since);
    }
}
