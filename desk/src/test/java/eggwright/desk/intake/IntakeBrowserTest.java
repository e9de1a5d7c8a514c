package eggwright.desk.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.options.ColorScheme;
import eggwright.desk.browser.BrowserStation;
import eggwright.desk.browser.BrowserStation.Screen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The ways by which readings come in, in a real browser. */
final class IntakeBrowserTest {
    private static final String NIGHT = """
            Timestamp,Temp,RH,Battery
            2027-05-10 22:00,34.5,55,3.1
            2027-05-10 22:10,34.6,54,3.1
            2027-05-10 22:20,95.0,54,3.1
            2027-05-10 22:30,34.4,54,3.1
            """;

    @TempDir
    private static Path watched;

    private static IntakeDesk farm;

    @BeforeAll
    static void openTheDesk() throws IOException {
        farm = new IntakeDesk(watched);
        farm.sensorsSend();
        farm.filesLie(watched);
    }

    @AfterAll
    static void closeTheDesk() {
        farm.close();
    }

    @Test
    void sensors_canBeReadByAll_onBothScreensLightAndDark() {
        BrowserStation.look(farm.at("/settings/sensors"), "sensors");
        BrowserStation.look(farm.at("/readings/files"), "bring");
    }

    @Test
    void keeper_addsASensor_andSeesItsToken() {
        for (var screen : Screen.values()) {
            BrowserStation.with(screen, ColorScheme.LIGHT, page -> {
                BrowserStation.go(page, farm.at("/settings"));
                page.locator("main").getByText("Sensors").click();
                page.locator("#f-name").fill("Shelf " + screen);
                page.locator("#f-place").selectOption("Hatcher");
                page.locator("#f-reads").selectOption("humidity_pct");
                page.locator("button.main").click();
                assertEquals(43, page.locator("#token").textContent().length());
                BrowserStation.mustFit(page, "sensor-added");
                BrowserStation.mustBeReadable(page, "sensor-added");
                BrowserStation.keepPicture(page, "sensor-added-" + screen);
            });
        }
    }

    /** A file whose unit nobody can tell by looking: asked, said, taken; by touch alone, without script. */
    @Test
    void keeper_bringsAFile_saysTheUnit_andSeesWhatWasTaken() throws IOException {
        for (var screen : Screen.values()) {
            var file = Files.writeString(
                    watched.resolve(".night-" + screen + ".csv"), NIGHT.replace("Temp", "Temp " + screen.name()));
            BrowserStation.with(screen, ColorScheme.LIGHT, page -> {
                BrowserStation.go(page, farm.at("/readings/files"));
                page.locator("#f-file").setInputFiles(file);
                page.locator("#f-place").selectOption("egg room");
                page.locator("button.main").click();
                assertTrue(page.locator("main").textContent().contains("may be °C or °F"), page.url());
                BrowserStation.mustFit(page, "file-asked");
                BrowserStation.mustBeReadable(page, "file-asked");
                BrowserStation.keepPicture(page, "file-asked-" + screen);
                page.locator("#f-column-1").selectOption("air_temperature_c");
                page.locator("button[value=look]").last().click();
                assertTrue(page.locator("main").textContent().contains("Nothing is kept yet"), page.url());
                BrowserStation.keepPicture(page, "file-seen-" + screen);
                page.locator("button.main").click();
                assertTrue(page.locator("h1").textContent().startsWith("Taken:"), page.url());
                assertTrue(page.locator("main").textContent().contains("One is held back"), page.url());
                BrowserStation.mustFit(page, "file-taken");
                BrowserStation.mustBeReadable(page, "file-taken");
                BrowserStation.keepPicture(page, "file-taken-" + screen);
            });
        }
    }
}
