package eggwright.desk.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.book.picture.Fate;
import eggwright.desk.Desk;
import eggwright.desk.Kept;
import eggwright.desk.farm.DemoDesk;
import eggwright.rates.Dimension;
import eggwright.rates.account.DeathWindows;
import eggwright.trade.SpeciesProfile;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rates of the invented farm, as they are drawn. */
final class RatePagesTest {
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
    @CsvSource({"by=species, species", "by=species&of=chukar, chukar"})
    void page_isDrawnAsKept(String asked, String name) throws IOException, InterruptedException {
        var request = HttpRequest.newBuilder(desk.address().resolve("/rates?" + asked));
        try (var client = HttpClient.newHttpClient()) {
            Kept.samePage(
                    "rate/" + name + ".html",
                    client.send(request.build(), BodyHandlers.ofString()).body());
        }
    }

    @Test
    void deaths_ofTheWholeFarm_areAllThatTheLampFoundDead() {
        var picture = DemoDesk.picture();
        var table =
                new DeathRows(SpeciesProfile::of, Locale.ENGLISH).of(picture, Dimension.NONE, List.of(Dimension.ALL));
        int found = picture.accounts().stream()
                .mapToInt(a -> a.eggs(Fate.DEAD) + a.eggs(Fate.BLOOD_RING))
                .sum();

        assertEquals(
                found,
                table.rows().stream()
                        .mapToInt(row -> Integer.parseInt(row.get(1).text()))
                        .sum());
    }

    @Test
    void deaths_ofASet_areThoseOfItsWindows() {
        var picture = DemoDesk.picture();
        var set = picture.sets().values().iterator().next();
        var windows = DeathWindows.of(picture, set.name(), SpeciesProfile::of);
        var table = new DeathRows(SpeciesProfile::of, Locale.ENGLISH).of(windows);

        assertEquals(
                windows.stream().mapToInt(w -> w.eggs()).sum(),
                table.rows().stream()
                        .mapToInt(row -> Integer.parseInt(row.get(1).text()))
                        .sum());
    }
}
