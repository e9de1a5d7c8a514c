package eggwright.units;

/** Why a value is refused, whatever the language; pages have a sentence of their own for each. An enum in each room. */
public interface Reason {
    /** As "mass-without-unit"; no two reasons have the same. */
    String word();
}
