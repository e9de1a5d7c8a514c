package eggwright.desk.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.desk.Kept;
import eggwright.intake.sensor.Sensors;
import java.io.IOException;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class SensorPagesTest {
    private static final Pattern TOKEN = Pattern.compile("id=\"token\">([^<]+)<");

    @TempDir
    private Path watched;

    private IntakeDesk farm;

    @BeforeEach
    void openTheDesk() {
        farm = new IntakeDesk(watched);
    }

    @AfterEach
    void closeTheDesk() {
        farm.close();
    }

    private String page() throws IOException, InterruptedException {
        var answer = farm.get("/settings/sensors");
        assertEquals(200, answer.statusCode(), answer.body());
        return answer.body();
    }

    @Test
    void page_isDrawnAsKept() throws Exception {
        farm.sensorsSend();
        farm.filesLie(watched);
        Kept.samePage(
                "intake/sensors.html",
                page().replace(watched.toString(), "/home/wren/loggers")
                        .replaceAll("/settings/sensors/[0-9a-f]{16}/", "/settings/sensors/ID/"));
    }

    @Test
    void sensor_isAdded_itsTokenShownOnce_andGoodAtOnce() throws Exception {
        var added = farm.post("/settings/sensors/add", "name=Shelf+2&place=Setter&reads=air_temperature_f");
        assertEquals(200, added.statusCode(), added.body());
        var found = TOKEN.matcher(added.body());
        assertTrue(found.find(), added.body());
        var token = found.group(1);
        assertTrue(added.body().contains("mqtt://broker.fallow-end.example:1883"), "where it sends by MQTT");
        assertTrue(added.body().contains("eggwright/readings/" + token), "and its topic");
        assertFalse(page().contains(token), "never again");
        assertTrue(page().contains("Has not read yet."));

        farm.tell(token, "99.5");

        assertTrue(page().contains("Last read 99.5 °F, Wed 12 May 12:00."), page());
        assertTrue(page().contains("one reading kept, 0 known already, no message refused"), page());
    }

    @Test
    void whatIsMissing_isSaidBesideItsField_andWhatWasTypedStays() throws Exception {
        var refused = farm.post("/settings/sensors/add", "name=Shelf+9&place=&reads=hope");
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("Choose where it hangs."), refused.body());
        assertTrue(refused.body().contains("Choose what it reads, and in which unit."));
        assertTrue(refused.body().contains("value=\"Shelf 9\""));
        assertTrue(farm.post("/settings/sensors/add", "name=&place=Setter&reads=humidity_pct")
                .body()
                .contains("Write a name of 1 to 80 characters."));
        assertEquals(java.util.List.of(), farm.sensors.all());
    }

    @Test
    void sameSensorTwice_isRefused() throws Exception {
        farm.post("/settings/sensors/add", "name=Shelf+2&place=Setter&reads=air_temperature_f");
        var again = farm.post("/settings/sensors/add", "name=Shelf+2&place=Setter&reads=air_temperature_f");
        assertEquals(422, again.statusCode());
        assertTrue(again.body().contains("“Shelf 2” reads the same there already."), again.body());
        assertEquals(1, farm.sensors.all().size());
    }

    @Test
    void revoked_isOutAtOnce_andSaidToStillSend() throws Exception {
        var token = farm.add(
                "Shelf 2", eggwright.climate.reading.Quantity.HUMIDITY, eggwright.climate.reading.ReadingUnit.PERCENT);
        var id = farm.sensors.all().getFirst().id();
        assertEquals(303, farm.post("/settings/sensors/" + id + "/revoke", "").statusCode());
        assertTrue(farm.sensors.known(token) instanceof Sensors.Known.Revoked);
        farm.tell(token, "47");
        var page = page();
        assertTrue(page.contains("It still sends: one message refused"), page);
        assertEquals(404, farm.post("/settings/sensors/" + id + "/revoke", "").statusCode());
    }

    @Test
    void whatCannotBeRight_isSaidBesideTheReading() throws Exception {
        farm.sensorsSend();
        var page = page();
        assertTrue(page.contains("Last read 99.5 °C, Wed 12 May 12:00."), page);
        assertTrue(page.contains("No such sensor can read this. Is it in the right unit?"), page);
        assertTrue(page.contains("The reading is in “C”, but the sensor is noted in °F."), page);
        assertTrue(page.contains("One message came under a token that nobody has"), page);
    }
}
