package eggwright.trade;

/** The birds that Eggwright knows, in the trade's own words. */
public enum Species {
    PHEASANT("pheasant", "Phasianus colchicus"),
    BOBWHITE("bobwhite", "Colinus virginianus"),
    CHUKAR("chukar", "Alectoris chukar"),
    RED_LEGGED_PARTRIDGE("red-legged partridge", "Alectoris rufa"),
    GREY_PARTRIDGE("grey partridge", "Perdix perdix"),
    COTURNIX("coturnix", "Coturnix japonica"),
    TURKEY("turkey", "Meleagris gallopavo"),
    GUINEA_FOWL("guinea fowl", "Numida meleagris"),
    MALLARD("mallard", "Anas platyrhynchos"),
    PEAFOWL("peafowl", "Pavo cristatus"),
    CHICKEN("chicken", "Gallus gallus domesticus");

    private final String word;
    private final String scientificName;

    Species(String word, String scientificName) {
        this.word = word;
        this.scientificName = scientificName;
    }

    /** The word used on pages, in files and messages; {@link #parse} reads it back. */
    public String word() {
        return word;
    }

    public String scientificName() {
        return scientificName;
    }

    /** Reads a species word or a common synonym; case, hyphens, underscores and a plural s do not matter. */
    public static SpeciesWord parse(String text) {
        return SpeciesWords.read(text);
    }
}
