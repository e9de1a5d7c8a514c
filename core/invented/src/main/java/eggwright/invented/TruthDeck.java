package eggwright.invented;

import eggwright.invented.chance.Draw;
import eggwright.invented.chance.Streams;
import eggwright.invented.truth.LampTruth;
import eggwright.invented.truth.LossTruth;
import eggwright.invented.truth.NotebookTruth;
import eggwright.invented.truth.PenTruth;
import eggwright.invented.truth.ScatterTruth;
import eggwright.invented.truth.SeasonTruth;
import eggwright.invented.truth.TakeOffTruth;
import eggwright.invented.truth.TrayTruth;
import eggwright.invented.truth.TrendTruth;
import eggwright.invented.truth.Truth;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/** Deals many truths, to judge an analysis over more than one farm. */
public final class TruthDeck {
    private TruthDeck() {}

    /**
     * Truths within the family that the analyses assume: levels, scatter, seasons and habits vary; trays are
     * beta-binomial, sets and weekly steps normal in logits. No slips, nothing late.
     */
    public static List<Truth> varied(long seed, int n) {
        var deck = new ArrayList<Truth>();
        for (int i = 0; i < n; i++) {
            deck.add(one(new Streams(seed).of("deck", i)));
        }
        return List.copyOf(deck);
    }

    /** The same truths in strange worlds, dealt in turn: number i lives in {@code Strange} i modulo their number. */
    public static List<Truth> outside(long seed, int n) {
        var worlds = Strange.values();
        var deck = new ArrayList<Truth>();
        for (var plain : varied(seed, n)) {
            deck.add(worlds[deck.size() % worlds.length].of(plain));
        }
        return List.copyOf(deck);
    }

    private static Truth one(RandomGenerator random) {
        var plain = Truth.PLAIN;
        var season = plain.season();
        double level = Draw.between(random, Draw.logit(0.7), Draw.logit(0.95));
        double drift = Draw.between(random, 0, 0.1);
        var pens = plain
                .pens()
                .subList(Draw.chance(random, 0.5) ? 0 : 2, plain.pens().size())
                .stream()
                .map(p -> pen(random, p, level, drift))
                .toList();
        return plain.with(new SeasonTruth(
                        Draw.between(random, 12, 16),
                        season.firstSetDay(),
                        season.setWeekday(),
                        season.setHour(),
                        season.workHour()))
                .withPens(pens)
                .withLosses(plain.losses().stream().map(l -> losses(random, l)).toList())
                .with(new TrendTruth(
                        Draw.between(random, -0.1, 0.03),
                        Draw.between(random, 0, 0.1),
                        Draw.between(random, 0, 0.08),
                        Draw.between(random, -0.02, 0.04),
                        Draw.between(random, 0, 0.1)))
                .with(new ScatterTruth(
                        Draw.between(random, 0, 0.25),
                        Draw.between(random, 0, 0.25),
                        ScatterTruth.Trays.BETA_BINOMIAL,
                        Draw.between(random, 0, 0.05),
                        Draw.between(random, 0, 0.05),
                        0,
                        0,
                        1000))
                .with(new TrayTruth(
                        plain.trays().eggs(),
                        Draw.between(random, 6, 12),
                        plain.trays().fewest(),
                        Draw.between(random, 0, 80.0),
                        Draw.chance(random, 0.5) ? 0 : plain.trays().pooledBelow()))
                .with(lamp(random))
                .with(new TakeOffTruth(
                        Draw.oneOf(random, List.of(TakeOffTruth.CountedBy.values())),
                        Draw.between(random, 1, 3),
                        Draw.oneOf(random, List.of(0.0, 60.0, 100.0))))
                .with(new NotebookTruth(0, 0, 0, 0, 5, 1, 0.5));
    }

    private static PenTruth pen(RandomGenerator random, PenTruth pen, double level, double drift) {
        double own = level + 0.35 * random.nextGaussian();
        return pen.withFertility(100 * Draw.share(own), drift);
    }

    private static LossTruth losses(RandomGenerator random, LossTruth l) {
        return new LossTruth(
                l.species(),
                times(random, l.earlyPct(), 0.4),
                times(random, l.midPct(), 0.4),
                times(random, l.latePct(), 0.4),
                times(random, l.pippedPct(), 0.3),
                l.malformedPct(),
                times(random, l.contaminatedPct(), 0.3),
                times(random, l.crackedPct(), 0.3),
                times(random, l.culledPct(), 0.3),
                times(random, l.deadInBasketPct(), 0.3));
    }

    /** A loss on another farm: its logit shifted. */
    private static double times(RandomGenerator random, double pct, double sd) {
        return 100 * Draw.share(Draw.logit(pct / 100) + sd * random.nextGaussian());
    }

    private static LampTruth lamp(RandomGenerator random) {
        var looks = Draw.oneOf(random, List.of(List.of(8), List.of(7), List.of(8, 14), List.of(7, 14)));
        return new LampTruth(
                looks,
                Draw.oneOf(random, List.of(LampTruth.AtTransfer.values())),
                Draw.between(random, 0.3, 2.0),
                Draw.between(random, 0.3, 2.0),
                Draw.between(random, 0, 0.2),
                Draw.between(random, 0, 1.0),
                0,
                0,
                1,
                Draw.oneOf(random, List.of(0.0, 35.0, 100.0)));
    }
}
