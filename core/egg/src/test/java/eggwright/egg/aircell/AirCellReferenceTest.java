package eggwright.egg.aircell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import eggwright.egg.Published;
import eggwright.egg.body.EggSize;
import eggwright.units.Length;
import eggwright.units.Mass;
import eggwright.units.OutOfRange;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AirCellReferenceTest {
    private static final double SHARE = 1e-4;

    /** The rows take 0.99334 g/cm³ for water near 37 °C, ours is 0.9931 at 37.5 °C. */
    private static final double SHARE_OF_WATER = 1e-3;

    private static final Pattern LOSS = Pattern.compile("loss (\\d+) %.*");

    static Stream<Published> flatCuts() {
        return Published.rows("egg_geometry", "air_cell_geometry");
    }

    static Stream<Published> fromMass() {
        return Published.rows("egg_geometry", "air_cell_from_mass_loss");
    }

    @ParameterizedTest
    @MethodSource("flatCuts")
    void flatCut_hasTheVolumeAndRingOfTheFormula(Published row) {
        var cut = new FlatCut(size(row));
        var depth = Length.ofMillimetres(row.number("air_cell_height_mm"));
        assertNear(row, "air_cell_volume_cm3", cut.volumeCubicCentimetres(depth), SHARE);
        assertNear(row, "air_cell_ring_diameter_mm", cut.ring(depth).millimetres(), SHARE);
        assertNear(
                row,
                "air_cell_height_mm",
                cut.depth(new AirCell(cut.volumeCubicCentimetres(depth))).millimetres(),
                1e-9);
    }

    @ParameterizedTest
    @MethodSource("fromMass")
    void airCell_isTheVolumeOfTheWaterLost(Published row) {
        var loss = LOSS.matcher(row.text("notes"));
        assertEquals(true, loss.matches(), row.id());
        double lost = row.number("egg_mass_g") * Integer.parseInt(loss.group(1)) / 100;
        var cell = AirCell.NONE.after(Mass.ofGrams(lost));
        assertNear(row, "air_cell_volume_cm3", cell.volumeCubicCentimetres(), SHARE_OF_WATER);
        var cut = new FlatCut(size(row));
        assertNear(row, "air_cell_height_mm", cut.depth(cell).millimetres(), SHARE_OF_WATER);
        assertNear(row, "air_cell_ring_diameter_mm", cut.ring(cut.depth(cell)).millimetres(), SHARE_OF_WATER);
    }

    /**
     * Durojaye and others 2018 (abstract read): the cell grew from 0.97 to 4.53 ml in nine days; 0.39 g a day is what a
     * 60 g egg loses at 0.65 % a day.
     */
    @Test
    void airCell_growsByTheMassLost_asMeasured() {
        var day3 = new AirCell(0.97);
        var day12 = day3.after(Mass.ofGrams(9 * 0.0065 * 60));
        assertEquals(4.53, day12.volumeCubicCentimetres(), 0.03);
    }

    /** The same eggs: the flat cut over-reads 3.6-fold on day 3 and 1.6-fold on day 12 (a 57 by 43 mm egg assumed). */
    @Test
    void flatCut_overReadsRealCells() {
        var cut = new FlatCut(EggSize.ofMillimetres(57, 43));
        assertEquals(3.6, cut.volumeCubicCentimetres(Length.ofMillimetres(8.7)) / 0.97, 0.2);
        assertEquals(1.6, cut.volumeCubicCentimetres(Length.ofMillimetres(13)) / 4.53, 0.1);
    }

    @Test
    void depth_tellsTheVolume_onceCalibratedOnEggsOfTheSameKind() {
        var hen = EggSize.ofMillimetres(57, 43);
        var calibration = DepthCalibration.of(List.of(
                new DepthCalibration.Seen(hen, Length.ofMillimetres(8.7), new AirCell(0.97)),
                new DepthCalibration.Seen(hen, Length.ofMillimetres(13), new AirCell(4.53))));
        assertEquals(0.97, calibration.of(hen, Length.ofMillimetres(8.7)).volumeCubicCentimetres(), 1e-9);
        assertEquals(4.53, calibration.of(hen, Length.ofMillimetres(13)).volumeCubicCentimetres(), 1e-9);
        assertEquals(0, calibration.of(hen, Length.ofMillimetres(2)).volumeCubicCentimetres());
        assertThrows(IllegalArgumentException.class, () -> DepthCalibration.of(List.of()));
    }

    @Test
    void depth_isRefused_ofACellLargerThanTheEgg() {
        var cut = new FlatCut(EggSize.ofMillimetres(30.5, 24.5));
        assertThrows(OutOfRange.class, () -> cut.depth(new AirCell(12)));
    }

    /** Rows of the sphere give one diameter only. */
    private static EggSize size(Published row) {
        double breadth = row.number("breadth_mm");
        return EggSize.ofMillimetres(row.text("length_mm").isEmpty() ? breadth : row.number("length_mm"), breadth);
    }

    private static void assertNear(Published row, String column, double ours, double share) {
        double printed = row.number(column);
        assertEquals(printed, ours, share * printed, row.id() + " " + column);
    }
}
