package eggwright.egg.body;

import static eggwright.egg.KeptTable.shown;
import static eggwright.egg.KeptTable.signed;

import eggwright.egg.KeptTable;
import eggwright.egg.Published;
import eggwright.egg.aircell.AirCell;
import eggwright.egg.aircell.FlatCut;
import eggwright.egg.outline.Hugelschaffer;
import eggwright.egg.outline.Outline;
import eggwright.egg.outline.Spheroid;
import eggwright.egg.outline.UniversalOutline;
import eggwright.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The tables of docs/models/egg-body.md. */
class EggBodyPageTest {
    private static final String PAGE = "egg-body.md";

    @Test
    void page_showsSizesBesideHoyts() {
        var table = new KeptTable("egg", "size, mm", "mass printed, g", "ours, g", "volume printed, cm³", "ours, cm³");
        Published.rows("egg_geometry", "equation_value")
                .filter(row -> row.text("method").startsWith("Hoyt"))
                .forEach(row -> {
                    var ours = FreshEgg.of(size(row));
                    table.add(
                            row.text("species"),
                            row.text("length_mm") + " by " + row.text("breadth_mm"),
                            row.text("egg_mass_g"),
                            shown(4, ours.massGrams()),
                            row.text("volume_cm3"),
                            shown(4, ours.volumeCubicCentimetres()));
                });
        table.isOn(PAGE, "size");
    }

    @Test
    void page_showsDensitiesMeasured() {
        var table = new KeptTable(
                "species", "density measured, g/cm³", "line through all birds", "shell measured, mm", "line");
        Published.rows("egg_geometry", "published_measurement", "egg_mass_g").forEach(row -> {
            var fresh = eggwright.units.Mass.ofGrams(row.number("egg_mass_g"));
            var thick = row.text("shell_thickness_mm");
            table.add(
                    row.text("species"),
                    row.text("egg_density_g_per_cm3"),
                    shown(3, Allometry.densityGramsPerCubicCentimetre(fresh)),
                    thick.isEmpty() ? "not given" : thick,
                    shown(2, Allometry.shellMillimetres(fresh)));
        });
        table.isOn(PAGE, "density");
    }

    @Test
    void page_showsOutlinesBesideScipys() {
        var table = new KeptTable(
                "outline", "L, B, w, D in mm", "volume printed, cm³", "ours", "surface printed, cm²", "ours");
        Published.rows("egg_geometry", "exact_geometry").forEach(row -> {
            var ours = outline(row);
            table.add(
                    ours.getClass().getSimpleName().replace("Outline", " formula"),
                    row.text("length_mm") + ", " + row.text("breadth_mm") + ", " + orNone(row, "offset_w_mm") + ", "
                            + orNone(row, "diameter_at_quarter_mm"),
                    row.text("volume_cm3"),
                    shown(5, ours.volumeCubicCentimetres()),
                    row.text("surface_area_cm2"),
                    shown(4, ours.surfaceSquareCentimetres()));
        });
        table.isOn(PAGE, "outline");
    }

    @Test
    void page_showsWhatDepthIsWorth() {
        var hen = new FlatCut(EggSize.ofMillimetres(57, 43));
        var table = new KeptTable("day", "depth measured, mm", "volume measured, cm³", "flat cut, cm³", "over-reads");
        for (var seen : List.of(new double[] {3, 8.7, 0.97}, new double[] {12, 13.0, 4.53})) {
            double flat = hen.volumeCubicCentimetres(Length.ofMillimetres(seen[1]));
            table.add(
                    shown(0, seen[0]),
                    shown(1, seen[1]),
                    shown(2, seen[2]),
                    shown(2, flat),
                    shown(1, flat / seen[2]) + "-fold");
        }
        table.isOn(PAGE, "depth");
    }

    @Test
    void page_showsAirCellsByLoss() {
        var table = new KeptTable("egg", "loss", "cell printed, cm³", "ours, cm³", "off, %");
        Published.rows("egg_geometry", "air_cell_from_mass_loss").forEach(row -> {
            int pct = Integer.parseInt(row.text("notes").replaceAll("\\D*(\\d+) %.*", "$1"));
            double ours = AirCell.NONE
                    .after(eggwright.units.Mass.ofGrams(row.number("egg_mass_g") * pct / 100))
                    .volumeCubicCentimetres();
            table.add(
                    row.text("species") + ", " + row.text("egg_mass_g") + " g",
                    pct + " %",
                    row.text("air_cell_volume_cm3"),
                    shown(5, ours),
                    signed(3, 100 * (ours / row.number("air_cell_volume_cm3") - 1)));
        });
        table.isOn(PAGE, "air cell");
    }

    private static String orNone(Published row, String column) {
        return row.text(column).isEmpty() ? "none" : row.text(column);
    }

    private static Outline outline(Published row) {
        var method = row.text("method");
        if (method.startsWith("prolate")) {
            return new Spheroid(size(row));
        }
        var shift = Length.ofMillimetres(row.number("offset_w_mm"));
        return method.startsWith("Huegel")
                ? new Hugelschaffer(size(row), shift)
                : new UniversalOutline(size(row), shift, Length.ofMillimetres(row.number("diameter_at_quarter_mm")));
    }

    private static EggSize size(Published row) {
        return EggSize.ofMillimetres(row.number("length_mm"), row.number("breadth_mm"));
    }
}
