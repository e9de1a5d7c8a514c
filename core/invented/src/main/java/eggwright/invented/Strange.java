package eggwright.invented;

import eggwright.invented.truth.BurstTruth;
import eggwright.invented.truth.LampTruth;
import eggwright.invented.truth.PenEventTruth;
import eggwright.invented.truth.PowerCutTruth;
import eggwright.invented.truth.ScatterTruth;
import eggwright.invented.truth.SectionTruth;
import eggwright.invented.truth.Truth;
import java.time.LocalTime;
import java.util.List;

/** Worlds outside the family that the analyses assume. */
public enum Strange {
    /** Now and then a tray far from all others. */
    HEAVY_TAILS,
    /** Rotten eggs that burst and spoil others. */
    BURSTS,
    /** Pens and farm that wander widely. */
    DRIFT,
    /** One evening in four careless, ten times as many mistakes. */
    CARELESS,
    /** Two long power cuts. */
    POWER_CUTS,
    /** A cock that fails in each of two pens. */
    FAILING_COCKS,
    /** One section far too dry. */
    DRY_SECTION;

    private static final double WILD_STEP = 0.3;

    /** The same truth in such a world. */
    public Truth of(Truth plain) {
        return switch (this) {
            case HEAVY_TAILS -> {
                var s = plain.scatter();
                yield plain.with(new ScatterTruth(
                        s.setFertilitySd(), s.setLossSd(), ScatterTruth.Trays.HEAVY_TAILED, 0, 0, 0.35, 0.35, 2.5));
            }
            case BURSTS -> plain.with(new BurstTruth(15, 9));
            case DRIFT ->
                plain.withPens(plain.pens().stream()
                        .map(p -> p.withFertility(p.fertilityPct(), WILD_STEP))
                        .toList());
            case CARELESS -> {
                var l = plain.lamp();
                yield plain.with(new LampTruth(
                        l.looks().isEmpty() ? List.of(8) : l.looks(),
                        l.atTransfer(),
                        1.5,
                        2,
                        0.3,
                        l.doubtfulPct(),
                        l.unsortedPct(),
                        25,
                        10,
                        l.openedClearsPct()));
            }
            case POWER_CUTS ->
                plain.withPowerCuts(List.of(
                        new PowerCutTruth(38, LocalTime.of(1, 30), 12, 0.5, 1.5, 4),
                        new PowerCutTruth(71, LocalTime.of(13, 0), 9, 0.5, 1.5, 4)));
            case FAILING_COCKS ->
                plain.withEvents(List.of(
                        new PenEventTruth(plain.pens().getFirst().name(), PenEventTruth.What.COCK_FAILS, 30, -2.5, 10),
                        new PenEventTruth(plain.pens().get(1).name(), PenEventTruth.What.COCK_FAILS, 55, -2.5, 10)));
            case DRY_SECTION -> {
                var dry = plain.sections().getLast();
                yield plain.withSections(plain.sections().stream()
                        .map(s -> s.equals(dry) ? new SectionTruth(s.machine(), s.name(), 0.6, 1.6, 1.5) : s)
                        .toList());
            }
        };
    }
}
