package eggwright.invented;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Replaced;
import eggwright.book.fold.Ledger;
import eggwright.book.name.SetName;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.SetPicture;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DemoSeasonTest {
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2027-05-12T15:00:00Z",
                "2027-03-14T12:00:00Z",
                "2026-11-25T11:00:00Z",
                "2028-02-29T23:30:00Z",
                "2027-11-07T06:30:00Z"
            })
    void demo_isMidSeason_onAnyDay(String now) {
        var season = DemoSeason.of(Instant.parse(now), CHICAGO);
        var picture = Ledger.of(season.entries()).picture();
        assertEquals(7, picture.sets().size());
        assertPhase(LoadPhase.IN_SETTER, 0, set(picture.sets().values(), 7));
        assertPhase(LoadPhase.IN_SETTER, 0, set(picture.sets().values(), 6));
        assertPhase(LoadPhase.IN_SETTER, 2, set(picture.sets().values(), 5));
        assertPhase(LoadPhase.IN_HATCHER, 2, set(picture.sets().values(), 4));
        for (int taken = 1; taken <= 3; taken++) {
            assertFalse(set(picture.sets().values(), taken).isRunning(), "set " + taken);
        }
        assertTrue(picture.eggRoom().values().stream().mapToInt(s -> s.eggs()).sum() > 20);
        assertEquals(
                List.of(season.answers().planted().getFirst().entry()),
                picture.discrepancies().stream()
                        .map(d -> d.entries().getFirst())
                        .toList());
        assertTrue(picture.orders().values().stream().anyMatch(o -> o.owed() > 0));
        assertTrue(season.entries().stream().anyMatch(k -> k.entry().payload() instanceof Replaced));
        assertTrue(season.entries().stream().noneMatch(k -> k.received().isAfter(Instant.parse(now))));
    }

    @Test
    void eveningWork_isLeftToTheVisitor_lateAtNight() {
        var night = DemoSeason.of(Instant.parse("2027-05-13T04:30:00Z"), CHICAGO);
        var noon = DemoSeason.of(Instant.parse("2027-05-12T18:00:00Z"), CHICAGO);
        assertEquals(noon.entries(), night.entries());
    }

    private static SetPicture set(java.util.Collection<SetPicture> sets, int number) {
        return sets.stream()
                .filter(s -> s.name().text().endsWith("-" + number))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no set " + number + " among "
                        + sets.stream().map(SetPicture::name).map(SetName::text).toList()));
    }

    private static void assertPhase(LoadPhase phase, int looks, SetPicture set) {
        for (var load : set.loads().values()) {
            if (load.phase() != LoadPhase.OUT) {
                assertEquals(phase, load.phase(), () -> load.ref().toString());
                assertEquals(looks, load.looks().size(), () -> load.ref().toString());
            }
        }
    }
}
