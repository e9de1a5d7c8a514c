package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.egg.body.EggSize;
import eggwright.egg.body.ExpectedPeriod;
import eggwright.egg.body.FreshEgg;
import eggwright.egg.body.MeasuredDensity;
import eggwright.egg.shell.Conductance;
import eggwright.egg.shell.ConductanceGuess;
import eggwright.egg.shell.PublishedShell;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import eggwright.units.Length;
import java.util.List;
import java.util.Optional;

/** What an egg of a size weighed when it was laid. */
final class EggCalculation implements Calculation {
    @Override
    public String name() {
        return "egg";
    }

    @Override
    public String about() {
        return "What an egg of a length and breadth weighed when it was laid, its volume and surface, with a first guess at"
                + " its shell and its time to hatch. Good to 2 to 4 %; ten fresh eggs on a scale tell more.";
    }

    @Override
    public String example() {
        return "eggwright calc egg --length 45.5mm --breadth 36mm --species pheasant";
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                Input.needed("length", "LENGTH", "from end to end, as 45.5mm, 4.55cm or 1.79in"),
                Input.needed("breadth", "LENGTH", "the greatest breadth"),
                Input.optional(SpeciesInput.NAME, "WORD", SpeciesInput.ALL + "; any bird where not said"));
    }

    @Override
    public Answer answer(Given given) {
        var size = new EggSize(
                given.neededQuantity("length", Length::parse), given.neededQuantity("breadth", Length::parse));
        var species = given.text(SpeciesInput.NAME).map(text -> SpeciesInput.of(given));
        var density = species.flatMap(EggCalculation::density);
        var egg = density.map(measured -> FreshEgg.of(size, measured)).orElseGet(() -> FreshEgg.of(size));
        var shell = shell(species, egg);
        var period = species.map(bird -> ExpectedPeriod.ofSpecies(
                        SpeciesProfile.of(bird).periodDays().value()))
                .orElseGet(() -> ExpectedPeriod.ofMass(egg.mass()));
        return Answer.of()
                .with("mass_g", egg.massGrams())
                .with("volume_cm3", egg.volumeCubicCentimetres())
                .with("surface_cm2", egg.surfaceSquareCentimetres())
                .with("density_g_per_cm3", egg.densityGramsPerCubicCentimetre())
                .with(
                        "density_source",
                        density.isPresent()
                                ? "measured, Asmundson and Baker 1940"
                                : "mean of all birds, Hoyt 1979, from memory")
                .with("conductance_first_guess_mg_per_day_torr", shell.milligramsPerDayTorr())
                .with(
                        "conductance_source",
                        published(species).isPresent()
                                ? "published for this species; see docs/models/weight-loss.md"
                                : "line through all birds, Ar and others 1974, from memory; 30 % either way")
                .with("expected_period_days", period.days())
                .with(
                        "expected_period_source",
                        switch (period) {
                            case ExpectedPeriod.OfSpecies known -> "the species' own; see calc species";
                            case ExpectedPeriod.OfMass guess ->
                                "line through all birds, Rahn and Ar 1974, from memory; days off for one species";
                        });
    }

    private static Conductance shell(Optional<Species> species, FreshEgg egg) {
        return published(species)
                .map(shell -> shell.of(egg.mass()))
                .orElseGet(() -> ConductanceGuess.ofAr1974(egg.mass()));
    }

    private static Optional<PublishedShell> published(Optional<Species> species) {
        return species.flatMap(bird -> switch (bird) {
            case TURKEY -> Optional.of(PublishedShell.TURKEY);
            case COTURNIX -> Optional.of(PublishedShell.COTURNIX);
            case PHEASANT,
                    BOBWHITE,
                    CHUKAR,
                    RED_LEGGED_PARTRIDGE,
                    GREY_PARTRIDGE,
                    GUINEA_FOWL,
                    MALLARD,
                    PEAFOWL,
                    CHICKEN -> Optional.empty();
        });
    }

    private static Optional<MeasuredDensity> density(Species species) {
        return switch (species) {
            case PHEASANT -> Optional.of(MeasuredDensity.RING_NECKED_PHEASANT);
            case CHICKEN -> Optional.of(MeasuredDensity.HEN);
            case TURKEY -> Optional.of(MeasuredDensity.TURKEY);
            case BOBWHITE, CHUKAR, RED_LEGGED_PARTRIDGE, GREY_PARTRIDGE, COTURNIX, GUINEA_FOWL, MALLARD, PEAFOWL ->
                Optional.empty();
        };
    }
}
