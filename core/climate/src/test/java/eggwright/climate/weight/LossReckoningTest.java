package eggwright.climate.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.trade.Species;
import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LossReckoningTest {
    private static final Shells GUESS = Shells.published(Species.PHEASANT);

    /** On the prairie midnight of Greenwich falls into the evening's round. */
    @Test
    void traysOfOneEvening_areOneWeighing_whereverGreenwichHasMidnight() {
        var setter = new Setter(new SplittableRandom(3), Setter.at(0), 0.0015, 3, 54)
                .weigh()
                .run(7, 50)
                .weigh();
        var evening = setter.now();
        assertEquals(13, evening.atOffset(java.time.ZoneOffset.UTC).getHour());
        var series = setter.series().stream()
                .map(one -> new MassSeries(one.set(), one.tray(), one.what(), late(one)))
                .toList();
        var loss = LossReckoning.of(
                Setter.NAME,
                Species.PHEASANT,
                Setter.SET,
                evening.plus(Duration.ofHours(11)),
                series,
                setter.air(),
                GUESS);
        assertEquals(1, loss.measured().size(), () -> loss.measured().toString());
    }

    /** The first tray at 23:50, the second at 00:05, the third at 00:20 of Greenwich. */
    private static List<MeanMass> late(MassSeries series) {
        int tray = Integer.parseInt(series.tray().text());
        var last = series.masses().getLast();
        return List.of(
                series.masses().getFirst(),
                new MeanMass(
                        last.at().plus(Duration.ofMinutes(635 + 15L * tray)),
                        last.grams(),
                        last.errorGrams(),
                        last.eggs()));
    }
}
