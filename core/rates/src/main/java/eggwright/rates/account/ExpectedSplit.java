package eggwright.rates.account;

import eggwright.book.picture.Fate;
import eggwright.book.picture.Parcel;
import eggwright.trade.BreakOutClass;
import eggwright.trade.DayRange;
import eggwright.trade.FirstGuess;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;

/**
 * How eggs would end by the trade's first guesses, for the hairline under an account. Whole losses only: what the lamp
 * would call a clear or a blood ring stands under its class of the break-out.
 *
 * @param eggs expected by fate, fractions kept; they add up to the eggs set
 */
public record ExpectedSplit(Map<Fate, Double> eggs) {
    /** Clears show at the lamp from about here on (handbook: look at day 7 in pale shells, 8 to 10 in dark). */
    private static final int CLEARS_SHOW = 5;

    public ExpectedSplit {
        eggs = Collections.unmodifiableMap(eggs.isEmpty() ? new EnumMap<>(Fate.class) : new EnumMap<>(eggs));
    }

    static ExpectedSplit of(Collection<Parcel> parcels, Function<Species, SpeciesProfile> profiles) {
        return sum(parcels, species -> shares(profiles.apply(species).losses()));
    }

    /** How they would stand after a look on this day of incubation. */
    static ExpectedSplit by(int day, Collection<Parcel> parcels, Function<Species, SpeciesProfile> profiles) {
        return sum(parcels, species -> shares(profiles.apply(species), day));
    }

    private static ExpectedSplit sum(Collection<Parcel> parcels, Function<Species, Map<Fate, Double>> shares) {
        var bySpecies = new EnumMap<Species, Integer>(Species.class);
        parcels.forEach(p -> bySpecies.merge(p.lot().species(), p.eggs(), Integer::sum));
        var sum = new EnumMap<Fate, Double>(Fate.class);
        bySpecies.forEach((species, eggs) ->
                shares.apply(species).forEach((fate, share) -> sum.merge(fate, share * eggs, Double::sum)));
        return new ExpectedSplit(sum);
    }

    /** The same shares as far as they have happened by a day; the deaths of a class are spread evenly over its days. */
    private static Map<Fate, Double> shares(SpeciesProfile profile, int day) {
        var whole = shares(profile.losses());
        var late = profile.days(BreakOutClass.LATE_DEAD).value();
        var shares = new EnumMap<Fate, Double>(Fate.class);
        shares.put(Fate.INFERTILE, day >= CLEARS_SHOW ? whole.getOrDefault(Fate.INFERTILE, 0.0) : 0);
        part(whole, Fate.EARLY_DEAD, past(profile.days(BreakOutClass.EARLY_DEAD).value(), day), shares);
        part(whole, Fate.MID_DEAD, past(profile.days(BreakOutClass.MID_DEAD).value(), day), shares);
        part(whole, Fate.LATE_DEAD, past(late, day), shares);
        part(whole, Fate.CRACKED, past(new DayRange(1, late.toDay()), day), shares);
        part(whole, Fate.CONTAMINATED, past(new DayRange(1, late.toDay()), day), shares);
        double gone = shares.values().stream().mapToDouble(Double::doubleValue).sum();
        shares.put(Fate.IN_SETTER, 1 - gone);
        return shares;
    }

    private static void part(Map<Fate, Double> whole, Fate fate, double past, Map<Fate, Double> into) {
        into.put(fate, past * whole.getOrDefault(fate, 0.0));
    }

    private static double past(DayRange days, int day) {
        double length = days.toDay() - days.fromDay() + 1;
        return Math.clamp((day - days.fromDay() + 1) / length, 0, 1);
    }

    /** Expected share of eggs set, 0 to 1, by fate. */
    private static Map<Fate, Double> shares(FirstGuess guess) {
        var shares = new EnumMap<Fate, Double>(Fate.class);
        double infertile = guess.infertileOfSet().value();
        double fertile = 1 - infertile;
        shares.put(Fate.INFERTILE, infertile);
        shares.put(Fate.CRACKED, guess.crackedOfSet().value());
        shares.put(Fate.EARLY_DEAD, fertile * guess.earlyDeadOfFertile().value());
        shares.put(Fate.MID_DEAD, fertile * guess.midDeadOfFertile().value());
        shares.put(Fate.LATE_DEAD, fertile * guess.lateDeadOfFertile().value());
        shares.put(Fate.PIPPED_DEAD, fertile * guess.pippedDeadOfFertile().value());
        shares.put(Fate.CONTAMINATED, guess.contaminatedOfSet().value());
        double lost = shares.values().stream().mapToDouble(Double::doubleValue).sum();
        double hatched = Math.max(0, 1 - lost);
        double basket = hatched * guess.deadInBasketOfHatched().value();
        double culled = hatched * guess.culledOfHatched().value();
        shares.put(Fate.DEAD_IN_BASKET, basket);
        shares.put(Fate.CULLED, culled);
        shares.put(Fate.SALEABLE, hatched - basket - culled);
        return shares;
    }
}
