package eggwright.egg.body;

import eggwright.units.Mass;

/** Days from set to hatch, and what they rest on. */
public sealed interface ExpectedPeriod {
    double days();

    /** The species' own period, or the farm's: always the better guide. */
    record OfSpecies(double days) implements ExpectedPeriod {}

    /**
     * The line through all birds, for want of better. It is wrong by days for single species: a bobwhite takes about four
     * days longer, a coturnix three less, a pheasant one less.
     */
    record OfMass(double days) implements ExpectedPeriod {}

    /** Of a bird whose period is known. */
    static ExpectedPeriod ofSpecies(double days) {
        return new OfSpecies(days);
    }

    /** Of a bird of which only the fresh egg's mass is known. */
    static ExpectedPeriod ofMass(Mass fresh) {
        return new OfMass(Allometry.incubationDays(fresh));
    }
}
