package eggwright.desk.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.desk.live.LiveBook;
import eggwright.desk.picture.SeasonChart.State;
import eggwright.invented.DemoSeason;
import eggwright.testkit.contracts.MemoryEntryStore;
import eggwright.wire.EntryCodec;
import java.time.InstantSource;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The season of the invented farm: three sets off, four in the machines. */
final class SeasonPictureTest {
    private final LiveBook empty = new LiveBook(
            new MemoryEntryStore(DemoSeason.of(DemoDesk.NOON, DemoDesk.ZONE).farm()),
            EntryCodec::write,
            EntryCodec::version,
            InstantSource.fixed(DemoDesk.NOON),
            new SplittableRandom(1));
    private final SeasonPicture season = new SeasonPicture(new Chicks(empty), Locale.ENGLISH);

    @Test
    void season_isNotDrawn_beforeTheFirstSet() {
        assertTrue(
                season.of(empty.picture(), DemoDesk.NOON.atZone(DemoDesk.ZONE).toLocalDate())
                        .isEmpty());
    }

    @Test
    void season_showsEverySet_andWhatCame() {
        var today = DemoDesk.NOON.atZone(DemoDesk.ZONE).toLocalDate();
        var chart = season.of(DemoDesk.picture(), today).orElseThrow();

        assertEquals(
                3, chart.bars().stream().filter(b -> b.state() == State.HATCHED).count());
        assertEquals(
                4,
                chart.bars().stream().filter(b -> b.state() == State.UNDER_WAY).count());
        assertTrue(
                chart.bars().getFirst().label().matches("27-1: \\d+ chicks"),
                chart.bars().getFirst().label());
        assertEquals(today, chart.today().orElseThrow().day());
        assertTrue(chart.bars().stream().allMatch(b -> !b.hatchOn().isAfter(chart.to())));
    }

    @Test
    void season_hasNoToday_onceItIsLongOver() {
        var chart = season.of(
                        DemoDesk.picture(),
                        DemoDesk.NOON.atZone(DemoDesk.ZONE).toLocalDate().plusYears(1))
                .orElseThrow();

        assertTrue(chart.today().isEmpty());
    }
}
