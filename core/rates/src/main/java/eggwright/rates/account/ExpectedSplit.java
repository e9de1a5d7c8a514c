package eggwright.rates.account;

import eggwright.book.picture.Fate;
import eggwright.book.picture.Parcel;
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
    public ExpectedSplit {
        eggs = Collections.unmodifiableMap(eggs.isEmpty() ? new EnumMap<>(Fate.class) : new EnumMap<>(eggs));
    }

    static ExpectedSplit of(Collection<Parcel> parcels, Function<Species, SpeciesProfile> profiles) {
        var bySpecies = new EnumMap<Species, Integer>(Species.class);
        parcels.forEach(p -> bySpecies.merge(p.lot().species(), p.eggs(), Integer::sum));
        var sum = new EnumMap<Fate, Double>(Fate.class);
        bySpecies.forEach((species, eggs) -> shares(profiles.apply(species).losses())
                .forEach((fate, share) -> sum.merge(fate, share * eggs, Double::sum)));
        return new ExpectedSplit(sum);
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
