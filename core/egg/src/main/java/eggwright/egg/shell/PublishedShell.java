package eggwright.egg.shell;

import eggwright.units.Mass;

/**
 * Conductances that somebody published for one species. For pheasant, bobwhite, chukar, partridges and duck no number
 * could be verified; weigh twice instead.
 */
public enum PublishedShell {
    /**
     * Turkey, 1,256 eggs: 18.70 mg/(day torr) for each 100 g, SD 2.87 between eggs. Meir, Nir and Ar 1984, Poultry Sci.
     * 63:1489 (abstract read).
     */
    TURKEY(0.1870),

    /**
     * Coturnix: 0.240 mg/(day torr) for each gram, derived by fitting three published losses
     * together with an egg 0.8 °C above the air: Romao and others 2009, Livest. Res. Rural Dev. 21(3) (abstract read).
     * Not a measurement.
     */
    COTURNIX(0.240);

    private final double torrPerGram;

    PublishedShell(double torrPerGram) {
        this.torrPerGram = torrPerGram;
    }

    /** Of an egg of this fresh mass. */
    public Conductance of(Mass fresh) {
        return Conductance.ofTorr(torrPerGram * fresh.grams());
    }
}
