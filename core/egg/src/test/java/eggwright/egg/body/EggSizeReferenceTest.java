package eggwright.egg.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.egg.Published;
import eggwright.units.Mass;
import eggwright.units.OutOfRange;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class EggSizeReferenceTest {
    /** The rows are worked out with the authors' formulas and printed to five or six figures. */
    private static final double SHARE = 1e-4;

    /** Shell lines are printed to fewer figures. */
    private static final double SHARE_OF_LINES = 5e-4;

    static Stream<Published> hoyt() {
        return formulas("Hoyt");
    }

    static Stream<Published> narushin() {
        return formulas("Narushin 2005");
    }

    static Stream<Published> paganelli() {
        return formulas("Paganelli");
    }

    static Stream<Published> formulas(String author) {
        return Published.rows("egg_geometry", "equation_value")
                .filter(row -> row.text("method").startsWith(author));
    }

    @ParameterizedTest
    @MethodSource("hoyt")
    void egg_hasHoytsMassAndVolume(Published row) {
        var egg = FreshEgg.of(size(row));
        assertNear(row, "egg_mass_g", egg.massGrams(), SHARE);
        assertNear(row, "volume_cm3", egg.volumeCubicCentimetres(), SHARE);
        assertNear(row, "egg_density_g_per_cm3", egg.densityGramsPerCubicCentimetre(), SHARE);
    }

    @ParameterizedTest
    @MethodSource("narushin")
    void henEgg_hasNarushinsVolumeAndSurface(Published row) {
        assertNear(row, "volume_cm3", HenEggFormula.volumeCubicCentimetres(size(row)), SHARE);
        assertNear(row, "surface_area_cm2", HenEggFormula.surfaceSquareCentimetres(size(row)), SHARE);
    }

    @ParameterizedTest
    @MethodSource("paganelli")
    void lines_areThoseOfThePapers(Published row) {
        var fresh = Mass.ofGrams(row.number("egg_mass_g"));
        assertNear(row, "surface_area_cm2", Allometry.surfaceSquareCentimetres(fresh), SHARE_OF_LINES);
        assertNear(row, "egg_density_g_per_cm3", Allometry.densityGramsPerCubicCentimetre(fresh), SHARE_OF_LINES);
        assertNear(row, "shell_mass_g", Allometry.shellGrams(fresh), SHARE_OF_LINES);
        assertNear(row, "shell_thickness_mm", Allometry.shellMillimetres(fresh), SHARE_OF_LINES);
    }

    /** Asmundson and Baker 1940, Table 1, as the rows give it. */
    @ParameterizedTest
    @CsvSource({"EGM-001, RING_NECKED_PHEASANT", "EGM-002, SILVER_PHEASANT", "EGM-003, HEN", "EGM-004, TURKEY"})
    void densities_areThoseMeasured(String id, MeasuredDensity density) {
        var row = Published.rows("egg_geometry")
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
        assertEquals(row.number("egg_density_g_per_cm3"), density.gramsPerCubicCentimetre());
    }

    /** Hoyt's own way to a species' mass: its density times 0.51 L B². 1.085 x 0.51 x 4.5 x 3.6² = 32.2714. */
    @Test
    void pheasantsEgg_isHeavierThanTheMeanOfAllBirds() {
        var size = EggSize.ofMillimetres(45, 36);
        var egg = FreshEgg.of(size, MeasuredDensity.RING_NECKED_PHEASANT);
        assertEquals(32.2714, egg.massGrams(), 0.0001);
        assertEquals(1.085, egg.densityGramsPerCubicCentimetre(), 1e-12);
        assertTrue(egg.massGrams() > FreshEgg.of(size).massGrams());
    }

    @Test
    void massFactor_isLearntFromTheFarmsOwnEggs() {
        var factor = FreshEgg.massFactor(List.of(
                new FreshEgg.Measured(EggSize.ofMillimetres(45, 36), Mass.ofGrams(32.1)),
                new FreshEgg.Measured(EggSize.ofMillimetres(46, 35), Mass.ofGrams(31.2))));
        // (32.1/58.32 + 31.2/56.35)/2, by hand.
        assertEquals(0.55205, factor, 0.00001);
        assertEquals(
                factor * 58.32,
                FreshEgg.weighed(EggSize.ofMillimetres(45, 36), factor).massGrams(),
                1e-9);
    }

    @Test
    void henEggFormula_isRefusedOnAQuailsEgg() {
        var quail = EggSize.ofMillimetres(30.5, 24.5);
        assertThrows(OutOfRange.class, () -> HenEggFormula.volumeCubicCentimetres(quail));
    }

    @ParameterizedTest
    @CsvSource({"36, 45", "455, 360", "45, 5", "NaN, 36"})
    void size_isRefused_whenNoEggHasIt(double length, double breadth) {
        assertThrows(OutOfRange.class, () -> EggSize.ofMillimetres(length, breadth));
    }

    /** Rows print I = 12.03 W^0.217; where the species' own period is known, that is used. */
    @Test
    void period_isTheSpeciesOwn_whereItIsKnown() {
        Published.rows("egg_conductance", "allometric_prediction")
                .forEach(row -> assertNear(
                        row,
                        "incubation_period_days",
                        ExpectedPeriod.ofMass(Mass.ofGrams(row.number("egg_mass_g")))
                                .days(),
                        1e-3));
        var own = assertInstanceOf(ExpectedPeriod.OfSpecies.class, ExpectedPeriod.ofSpecies(24));
        assertEquals(24, own.days());
    }

    private static EggSize size(Published row) {
        return EggSize.ofMillimetres(row.number("length_mm"), row.number("breadth_mm"));
    }

    private static void assertNear(Published row, String column, double ours, double share) {
        double printed = row.number(column);
        assertEquals(printed, ours, share * printed, row.id() + " " + column);
    }
}
