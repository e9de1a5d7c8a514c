package eggwright.desk.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.desk.Desk;
import eggwright.desk.Kept;
import eggwright.desk.farm.DemoDesk;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The machines of the invented farm, as they are drawn. */
final class MachinePagesTest {
    private static Desk desk;

    @BeforeAll
    static void openTheDesk() {
        desk = DemoDesk.open();
    }

    @AfterAll
    static void closeTheDesk() {
        desk.close();
    }

    private static HttpResponse<String> get(Desk from, String path) throws IOException, InterruptedException {
        try (var client = HttpClient.newHttpClient()) {
            return client.send(
                    HttpRequest.newBuilder(from.address().resolve(path)).build(), BodyHandlers.ofString());
        }
    }

    private static String page(String path) throws IOException, InterruptedException {
        var answer = get(desk, path);
        assertEquals(200, answer.statusCode(), answer.body());
        return answer.body();
    }

    @ParameterizedTest
    @CsvSource({
        "/machines/Setter?span=week&to=2027-05-10T17:00:00Z, setter-week",
        "/machines/Hatcher?span=season, hatcher-season",
        "/machines/wet-bulb-table, wet-bulb-table"
    })
    void page_isDrawnAsKept(String path, String name) throws IOException, InterruptedException {
        Kept.samePage("machine/" + name + ".html", page(path));
    }

    @Test
    void machineThatNobodyKnows_isNotThere() throws IOException, InterruptedException {
        assertEquals(404, get(desk, "/machines/Toaster").statusCode());
        assertEquals(404, get(desk, "/machines/%20").statusCode());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "?span=fortnight",
                "?to=yesterday",
                "?span=day&to=9999-01-01T00:00:00Z",
                "?to=-1000000-01-01T00:00:00Z"
            })
    void window_thatNobodyCanMean_isDrawnNonetheless(String asked) throws IOException, InterruptedException {
        assertTrue(page("/machines/Setter" + asked).contains("What was read"));
    }

    @Test
    void powerCut_isDrawn_andLooseProbeIsHeldBack() throws IOException, InterruptedException {
        var month = page("/machines/Setter?span=month");

        assertTrue(month.contains("2 readings in this time cannot be right"), month);
        assertTrue(month.contains("185.0\u00a0°F"), month);
        assertTrue(month.contains("5 h 1 min"), month);
        // Ninety-five minutes at a cooling of one part in 420 a minute: from 99.6 to about 93 °F.
        assertTrue(month.contains("from 92.") || month.contains("from 93."), month);
    }

    @Test
    void farmWithoutSensors_seesWhatItsKeeperRead() throws IOException, InterruptedException {
        try (var plain = DemoDesk.open(new NoReadings())) {
            var week = get(plain, "/machines/Setter?span=week").body();

            assertTrue(week.contains("read by hand"), week);
            assertFalse(week.contains("Readings held back"), week);
        }
    }

    @Test
    void calculator_answersBesideItsFields_orSaysWhatIsWrong() throws IOException, InterruptedException {
        // 6.62e-4 x 101.325 kPa x 7.5 K off 4.247 kPa (IAPWS at 30 °C), over 6.455 kPa (at 37.5 °C): 58.0 %.
        assertTrue(page("/machines/Setter?dry=37.5C&wet=30C&altitude=0m").contains("<b>58.0\u00a0%</b>"));
        assertTrue(page("/machines/Setter?dry=99.5&wet=86F").contains("99.5F"));
        assertTrue(page("/machines/Setter?dry=99.5C&wet=86F").contains("Fahrenheit?"));
        assertTrue(page("/machines/Setter?dry=86F&wet=99.5F").contains("swapped"));
        assertTrue(page("/machines/Setter?dry=99.5F&wet=86F&humidity=55").contains("Leave one of them empty"));
        assertTrue(page("/machines/Setter?dry=99.5F").contains("One more is needed"));
        assertTrue(page("/machines/Setter?dry=%3Cscript%3E").contains("&lt;script&gt;"));
    }

    /**
     * The table for the wall against that of the US Weather Bureau (1897), as printed in Ward, Practical Exercises in Elementary
     * Meteorology (1899), Table II: whole percent, so that ours may differ by one and a rounding.
     */
    @ParameterizedTest
    @CsvSource({"98.0, 85, 59", "98.0, 83, 53", "98.0, 81, 48"})
    void tableForTheWall_agreesWithThePublishedOne(String dry, String wet, int published)
            throws IOException, InterruptedException {
        var table = page("/machines/wet-bulb-table");
        var column = table.substring(table.indexOf("<table"), table.indexOf("<tbody"))
                .split("class=\"n\">", -1);
        int at = -1;
        for (int i = 1; i < column.length; i++) {
            at = column[i].startsWith(dry + "<") ? i : at;
        }
        var row = table.substring(table.indexOf("class=\"n\">" + wet + "<"));
        var cells = row.substring(0, row.indexOf("</tr>")).split("<td class=\"n\">", -1);

        assertEquals(published, Integer.parseInt(cells[at].substring(0, cells[at].indexOf('<'))), 1.5);
    }
}
