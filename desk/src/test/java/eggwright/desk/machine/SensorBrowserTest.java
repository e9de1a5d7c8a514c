package eggwright.desk.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.options.ColorScheme;
import eggwright.desk.Desk;
import eggwright.desk.browser.BrowserStation;
import eggwright.desk.browser.BrowserStation.Screen;
import eggwright.desk.farm.DemoDesk;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages of the sensors in a real browser. */
final class SensorBrowserTest {
    private static Desk desk;

    @BeforeAll
    static void openTheDesk() {
        desk = DemoDesk.open();
    }

    @AfterAll
    static void closeTheDesk() {
        desk.close();
    }

    @ParameterizedTest
    @CsvSource({
        "/machines/Setter/sensors, setter",
        "/egg-room/sensors, egg-room",
        "/brooder/sensors, brooder",
        "/sensors, places",
        "/notes/sensor-compared?sensor_place=in_machine&machine=Setter&sensor=logger&quantity=air_temperature, compared",
        "/notes/readings-released?sensor_place=in_machine&machine=Setter&sensor=logger&quantity=humidity, released"
    })
    void page_canBeReadByAll_onBothScreensLightAndDark(String path, String name) {
        BrowserStation.look(desk.address().resolve(path), "sensors-" + name);
    }

    /** From the machine to its sensors, held against a reference, and back: by touch alone. */
    @Test
    void keeper_comparesASensor_onAPhone() {
        try (var own = DemoDesk.open()) {
            BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
                BrowserStation.go(page, own.address().resolve("/machines/Setter"));
                page.locator(".actions").getByText("Sensors").click();
                page.getByText("Compare with a reference").first().click();
                assertEquals("logger", page.locator("#f-sensor").inputValue());
                page.locator("#f-showed").fill("99.4F");
                page.locator("#f-reference").fill("99.8F");
                page.locator("#f-compared_by").fill("glass, checked in ice");
                page.locator("button.main").click();
                page.getByText("Go to the sensors here").click();
                assertTrue(page.locator("main").textContent().contains("+0.4"));
                BrowserStation.mustFit(page, "sensors-after-comparison");
                BrowserStation.keepPicture(page, "sensors-after-comparison");
            });
        }
    }

    /** 99.5 with a C behind it: the question stands beside the field, and what was typed is still in it. */
    @Test
    void keeper_typesTheWrongScale_andIsAsked() {
        BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address().resolve("/notes/climate-noted?machine=Setter"));
            page.locator("#f-dry").fill("99.5C");
            page.locator("#f-wet").fill("86F");
            page.locator("button.main").click();
            assertTrue(page.locator("#f-dry-message").textContent().contains("Fahrenheit? Then write 99.5F."));
            assertEquals("99.5C", page.locator("#f-dry").inputValue());
            BrowserStation.mustFit(page, "climate-wrong-scale");
            BrowserStation.keepPicture(page, "climate-wrong-scale");
        });
    }
}
