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
import eggwright.trade.FarmSpread;
import eggwright.trade.SeasonSlopes;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Deals many truths, to judge an analysis over more than one farm: the world that the trade's tables describe.
 *
 * <p>Levels: each species' published losses, and about them the spread of the published farms ({@link FarmSpread}), the
 * same figures that forecasts start from. They hold in the middle of the season, through which they change as published
 * ({@link SeasonSlopes}). Nothing was published on how sets, trays, pens
 * and weeks scatter: those spreads are ours, and stated here.
 */
public final class TruthDeck {
    /** Half-normal, logits: how far whole sets lie from the farm's level. */
    private static final double SETS = 0.25;
    /** Exponential mean of the likeness of eggs in a tray, as in the other analyses (learnt shares). */
    private static final double TRAYS = 0.05;

    private static final double MOST_ALIKE = 0.5;
    /** Half-normal, logits a week: how fast the farm's fertility wanders, and its losses. */
    private static final double DRIFT = 0.1;
    /** Normal, logits: how far pens lie from their farm's fertility. */
    private static final double PENS = 0.35;
    /** Normal, logits a week: how fast pens part. */
    private static final double PEN_DRIFT = 0.05;

    /**
     * A day: the trade's dates end with the window of a species, and some 3 % of chukar would hatch after the pull on that
     * morning, which no published loss counts.
     */
    private static final int NOTHING_LATE_HOURS = 24;

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
        var season = new SeasonTruth(
                Draw.between(random, 12, 16),
                plain.season().firstSetDay(),
                plain.season().setWeekday(),
                plain.season().setHour(),
                plain.season().workHour());
        double half = (season.firstSetDay() / 7.0) + (season.sets() - 1) / 2.0;
        var trend = trend(random);
        var kept = plain.pens()
                .subList(Draw.chance(random, 0.5) ? 0 : 2, plain.pens().size());
        var fertility = new EnumMap<Species, Double>(Species.class);
        var losses = new ArrayList<LossTruth>();
        for (var species : kept.stream().map(PenTruth::species).distinct().toList()) {
            double infertile =
                    SpeciesProfile.of(species).losses().infertileOfSet().value();
            fertility.put(
                    species,
                    -Draw.logit(infertile)
                            + FarmSpread.PUBLISHED.fertility() * random.nextGaussian()
                            - trend.fertilityPerWeek() * half);
            losses.add(losses(random, species, trend, half));
        }
        var pens = kept.stream()
                .map(p -> p.withFertility(
                        pct(fertility.getOrDefault(p.species(), 0.0) + PENS * random.nextGaussian()), PEN_DRIFT))
                .toList();
        return plain.with(season)
                .withPens(pens)
                .withLosses(losses)
                .with(trend)
                .with(new ScatterTruth(
                        halfNormal(random, SETS),
                        halfNormal(random, SETS),
                        ScatterTruth.Trays.BETA_BINOMIAL,
                        exponential(random, TRAYS),
                        exponential(random, TRAYS),
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
                        Draw.oneOf(random, List.of(0.0, 60.0, 100.0)),
                        NOTHING_LATE_HOURS))
                .with(new NotebookTruth(0, 0, 0, 0, 5, 1, 0.5));
    }

    private static TrendTruth trend(RandomGenerator random) {
        var slopes = SeasonSlopes.PUBLISHED;
        return new TrendTruth(
                slopes.fertility() + slopes.spread() * random.nextGaussian(),
                slopes.early() + slopes.spread() * random.nextGaussian(),
                slopes.mid() + slopes.spread() * random.nextGaussian(),
                slopes.late() + slopes.spread() * random.nextGaussian(),
                halfNormal(random, DRIFT),
                halfNormal(random, DRIFT));
    }

    /** The losses of another farm of this species at the start of its season. */
    private static LossTruth losses(RandomGenerator random, Species species, TrendTruth trend, double half) {
        var guess = SpeciesProfile.of(species).losses();
        var trade = LossTruth.ofTrade(species);
        double spread = FarmSpread.PUBLISHED.ofEachLoss(guess);
        // The trade's late deaths hold the malformed.
        double malformed = Math.min(trade.malformedPct(), trade.latePct() / 2);
        return new LossTruth(
                species,
                elsewhere(random, trade.earlyPct(), spread, -trend.earlyPerWeek() * half),
                elsewhere(random, trade.midPct(), spread, -trend.midPerWeek() * half),
                elsewhere(random, trade.latePct() - malformed, spread, -trend.latePerWeek() * half),
                elsewhere(random, trade.pippedPct(), spread, 0),
                malformed,
                elsewhere(random, trade.contaminatedPct(), spread, 0),
                elsewhere(random, trade.crackedPct(), spread, 0),
                elsewhere(random, trade.culledPct(), spread, 0),
                elsewhere(random, trade.deadInBasketPct(), spread, 0));
    }

    private static double elsewhere(RandomGenerator random, double pct, double spread, double shift) {
        return pct(Draw.logit(pct / 100) + spread * random.nextGaussian() + shift);
    }

    private static double pct(double logit) {
        return 100 * Draw.share(logit);
    }

    private static double halfNormal(RandomGenerator random, double scale) {
        return Math.abs(scale * random.nextGaussian());
    }

    private static double exponential(RandomGenerator random, double mean) {
        return Math.min(MOST_ALIKE, -mean * Math.log(1 - random.nextDouble()));
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
