package eggwright.climate.weight;

import eggwright.egg.shell.ConductanceGuess;
import eggwright.egg.shell.PublishedShell;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import eggwright.units.OutOfRange;

/**
 * How leaky the shells of some eggs are: the share of its set mass that an egg loses for each kPa day.
 *
 * @param share for each kPa day, at sea level and 37.5 °C, above 0
 * @param error standard error of it
 * @param from what it rests on
 */
public record Shells(double share, double error, From from) {
    /** What it rests on. */
    public enum From {
        /** Other birds, or all birds: no egg of this farm. */
        PUBLISHED,
        /** Earlier sets of the species on this farm. */
        EARLIER_SETS,
        /** These eggs' own weighings, drawn a little towards the others. */
        WEIGHED
    }

    /** Between species of one mass, and so for a bird that was never weighed: from memory. */
    static final double GUESS_VARIATION = 0.30;

    private static final double GRAMS = 1000;

    public Shells {
        OutOfRange.check("Share lost for each kPa day", share, 1e-6, 1, "");
        OutOfRange.check("Error of that share", error, 0, 1, "");
    }

    /** What is published for a species, or for eggs of its mass. */
    public static Shells published(Species species) {
        var mass = SpeciesProfile.of(species).eggMass().value();
        var conductance = switch (species) {
            case TURKEY -> PublishedShell.TURKEY.of(mass);
            case COTURNIX -> PublishedShell.COTURNIX.of(mass);
            case PHEASANT,
                    BOBWHITE,
                    CHUKAR,
                    RED_LEGGED_PARTRIDGE,
                    GREY_PARTRIDGE,
                    GUINEA_FOWL,
                    MALLARD,
                    PEAFOWL,
                    CHICKEN -> ConductanceGuess.ofAr1974(mass);
        };
        double share = conductance.milligramsPerDayKilopascal() / GRAMS / mass.grams();
        return new Shells(share, GUESS_VARIATION * share, From.PUBLISHED);
    }
}
