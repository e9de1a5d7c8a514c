package eggwright.egg.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import eggwright.egg.Published;
import eggwright.egg.body.EggSize;
import eggwright.units.Length;
import eggwright.units.OutOfRange;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class OutlineReferenceTest {
    private static final double SHARE_OF_VOLUME = 1e-4;
    private static final double SHARE_OF_SURFACE = 5e-4;

    /** Between the closed form and quadrature: an independent check, with SciPy, reached 1e-8. */
    private static final double SHARE_OF_QUADRATURE = 1e-8;

    static Stream<Published> rows() {
        return Published.rows("egg_geometry", "exact_geometry");
    }

    static Stream<Published> hugelschaffer() {
        return rows().filter(row -> row.text("method").startsWith("Huegel"));
    }

    static Stream<Published> universal() {
        return rows().filter(row -> row.text("method").startsWith("universal"));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void outline_hasTheVolumeAndSurfaceWorkedOutElsewhere(Published row) {
        var outline = outline(row);
        double volume = row.number("volume_cm3");
        double surface = row.number("surface_area_cm2");
        assertEquals(volume, outline.volumeCubicCentimetres(), SHARE_OF_VOLUME * volume, row.id());
        assertEquals(surface, outline.surfaceSquareCentimetres(), SHARE_OF_SURFACE * surface, row.id());
    }

    @ParameterizedTest
    @MethodSource("hugelschaffer")
    void hugelschaffer_hasTheSameVolumeInClosedForm(Published row) {
        var egg = new Hugelschaffer(size(row), shift(row));
        double volume = egg.volumeCubicCentimetres();
        assertEquals(volume, egg.closedVolumeCubicCentimetres(), SHARE_OF_QUADRATURE * volume, row.id());
        assertEquals(row.number("diameter_at_quarter_mm"), 2 * egg.radius(row.number("length_mm") / 4), 1e-4, row.id());
    }

    @ParameterizedTest
    @MethodSource("universal")
    void universalEgg_returnsTheDiameterThatItWasGiven(Published row) {
        var egg = (UniversalOutline) outline(row);
        assertEquals(row.number("diameter_at_quarter_mm"), 2 * egg.radius(row.number("length_mm") / 4), 1e-9);
    }

    @ParameterizedTest
    @MethodSource("universal")
    void universalEgg_isHugelschaffers_withItsDiameter(Published row) {
        var plain = new Hugelschaffer(size(row), shift(row));
        var egg = new UniversalOutline(
                size(row), shift(row), Length.ofMillimetres(2 * plain.radius(row.number("length_mm") / 4)));
        assertEquals(plain.volumeCubicCentimetres(), egg.volumeCubicCentimetres(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-20, -7.5, 0, 3, 11.25, 19})
    void slope_isThatOfTheRadius(double x) {
        var egg = new UniversalOutline(
                EggSize.ofMillimetres(45, 36), Length.ofMillimetres(2), Length.ofMillimetres(28.5));
        double step = 1e-5;
        double slope = (egg.radiusSquared(x + step) - egg.radiusSquared(x - step)) / (4 * step);
        assertEquals(slope, egg.radiusTimesSlope(x), 1e-6);
    }

    @Test
    void hugelschaffer_isTheSpheroid_withoutAShift() {
        var size = EggSize.ofMillimetres(45, 36);
        assertEquals(
                new Spheroid(size).volumeCubicCentimetres(),
                new Hugelschaffer(size, Length.ofMillimetres(0)).closedVolumeCubicCentimetres(),
                1e-9);
        assertEquals(Math.PI * 45 * 36 * 36 / 6000, new Spheroid(size).volumeCubicCentimetres(), 1e-9);
    }

    @Test
    void outline_isRefused_whenItIsNoEgg() {
        var size = EggSize.ofMillimetres(45, 36);
        assertThrows(OutOfRange.class, () -> new Hugelschaffer(size, Length.ofMillimetres(20)));
        assertThrows(
                OutOfRange.class, () -> new UniversalOutline(size, Length.ofMillimetres(2), Length.ofMillimetres(36)));
    }

    private static Outline outline(Published row) {
        var method = row.text("method");
        if (method.startsWith("prolate")) {
            return new Spheroid(size(row));
        }
        return method.startsWith("Huegel")
                ? new Hugelschaffer(size(row), shift(row))
                : new UniversalOutline(
                        size(row), shift(row), Length.ofMillimetres(row.number("diameter_at_quarter_mm")));
    }

    private static Length shift(Published row) {
        return Length.ofMillimetres(row.number("offset_w_mm"));
    }

    private static EggSize size(Published row) {
        return EggSize.ofMillimetres(row.number("length_mm"), row.number("breadth_mm"));
    }
}
