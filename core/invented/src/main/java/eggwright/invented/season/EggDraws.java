package eggwright.invented.season;

import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.invented.answer.Germ;
import eggwright.invented.answer.TrueFate;
import eggwright.invented.chance.Draw;
import eggwright.invented.truth.PenTruth;
import eggwright.invented.truth.SectionTruth;
import eggwright.trade.DayRange;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/** Draws what each egg will come to, from the levels, the set's and the tray's own luck, and what befalls the machine. */
final class EggDraws {
    /** Chances of days 1, 2, 3, 4 of an early death, in quarters of the early days. From memory: most on days 2 and 3. */
    private static final double[] EARLY_QUARTERS = {0.15, 0.5, 0.8, 1};

    private static final int FIRST_ROT_DAY = 7;
    private static final int LAST_ROT_DAY = 20;
    /** Spread of the hatch of single eggs, and its delay by storage (about an hour a day, common practice, no source). */
    private static final double HATCH_SD_DAYS = 0.3;

    private static final double HATCH_DELAY_PER_STORAGE_DAY = 1 / 24.0;

    private final Farm farm;

    EggDraws(Farm farm) {
        this.farm = farm;
    }

    /** The chances of one lot in one tray, in logits. */
    private record Chances(double fertile, double early, double mid, double late) {}

    List<Egg> draw(
            SetName set,
            TrayName tray,
            SectionTruth section,
            PenTruth pen,
            List<EggRoom.Laid> laid,
            ZonedDateTime setAt) {
        var random = farm.streams.of("eggs", set, tray, pen.name());
        var setOn = setAt.toLocalDate();
        var shift = shifts(set, tray, section, pen, laid.get(laid.size() / 2).on(), setOn);
        var eggs = new ArrayList<Egg>();
        for (var lot : laid) {
            var chances = plus(levels(section, pen, lot.on(), setOn), shift);
            for (int i = 0; i < lot.eggs(); i++) {
                eggs.add(egg(random, pen, lot.on(), setOn, chances));
            }
        }
        return eggs;
    }

    private Chances levels(SectionTruth section, PenTruth pen, LocalDate laidOn, LocalDate setOn) {
        var losses = farm.bird(pen.species()).losses();
        int day = farm.day(setOn);
        long stored = ChronoUnit.DAYS.between(laidOn, setOn);
        double aged = Math.max(0, stored - farm.truth.eggRoom().freeDays())
                * farm.truth.eggRoom().earlyPerDay();
        return new Chances(
                farm.levels.fertility(pen, farm.day(laidOn)),
                farm.levels.loss(Levels.Loss.EARLY, losses, day) + aged,
                farm.levels.loss(Levels.Loss.MID, losses, day) + section.midLogit(),
                farm.levels.loss(Levels.Loss.LATE, losses, day) + section.lateLogit());
    }

    private Chances shifts(
            SetName set, TrayName tray, SectionTruth section, PenTruth pen, LocalDate laidOn, LocalDate setOn) {
        var scatter = farm.truth.scatter();
        var whole = farm.streams.of("set scatter", set);
        double[] sets = {
            scatter.setFertilitySd() * whole.nextGaussian(),
            scatter.setLossSd() * whole.nextGaussian(),
            scatter.setLossSd() * whole.nextGaussian(),
            scatter.setLossSd() * whole.nextGaussian()
        };
        var level = levels(section, pen, laidOn, setOn);
        var own = farm.streams.of("tray scatter", set, tray, pen.name());
        return new Chances(
                sets[0] + tray(own, level.fertile() + sets[0], scatter.fertilityRho(), scatter.fertilitySd()),
                sets[1] + tray(own, level.early() + sets[1], scatter.lossRho(), scatter.lossSd()),
                sets[2] + tray(own, level.mid() + sets[2], scatter.lossRho(), scatter.lossSd()),
                sets[3] + tray(own, level.late() + sets[3], scatter.lossRho(), scatter.lossSd()));
    }

    private double tray(RandomGenerator random, double level, double rho, double sd) {
        return switch (farm.truth.scatter().trays()) {
            case BETA_BINOMIAL -> rho == 0 ? 0 : Draw.logit(Draw.beta(random, Draw.share(level), rho)) - level;
            case LOGIT_NORMAL -> sd * random.nextGaussian();
            case HEAVY_TAILED -> sd * Draw.student(random, farm.truth.scatter().tailDegrees());
        };
    }

    private static Chances plus(Chances a, Chances b) {
        return new Chances(a.fertile + b.fertile, a.early + b.early, a.mid + b.mid, a.late + b.late);
    }

    private Egg egg(RandomGenerator random, PenTruth pen, LocalDate laidOn, LocalDate setOn, Chances chances) {
        var bird = farm.bird(pen.species());
        var losses = bird.losses();
        // Every egg takes the same number of draws, so that a change of one level leaves the luck of the others.
        double fertile = random.nextDouble();
        double cracked = random.nextDouble();
        double rotten = random.nextDouble();
        double early = random.nextDouble();
        double mid = random.nextDouble();
        double malformed = random.nextDouble();
        double late = random.nextDouble();
        double pipped = random.nextDouble();
        double chick = random.nextDouble();
        double when = random.nextDouble();
        double hatch = random.nextGaussian();
        var germ = fertile < Draw.share(chances.fertile) ? Germ.FERTILE : Germ.INFERTILE;
        var egg = new Egg(new PenName(pen.name()), laidOn, germ, TrueFate.INFERTILE, 0);
        if (germ == Germ.FERTILE) {
            long stored = ChronoUnit.DAYS.between(laidOn, setOn);
            egg.hatchDays = bird.periodDays() + HATCH_SD_DAYS * hatch + HATCH_DELAY_PER_STORAGE_DAY * (stored - 4);
            double culled = losses.culledPct() / 100;
            double dead = losses.deadInBasketPct() / 100;
            egg.ends(
                    chick < culled
                            ? TrueFate.CULLED
                            : chick < culled + dead ? TrueFate.DEAD_IN_BASKET : TrueFate.SALEABLE,
                    (int) Math.floor(egg.hatchDays));
            if (early < Draw.share(chances.early)) {
                egg.ends(TrueFate.EARLY_DEAD, earlyDay(bird.early(), when));
            } else if (mid < Draw.share(chances.mid)) {
                egg.ends(TrueFate.MID_DEAD, within(bird.mid(), when));
            } else if (malformed < losses.malformedPct() / 100) {
                egg.ends(TrueFate.MALFORMED, within(bird.late(), when));
            } else if (late < Draw.share(chances.late)) {
                egg.ends(TrueFate.LATE_DEAD, Math.min(within(bird.late(), when), (int) bird.periodDays()));
            } else if (pipped < losses.pippedPct() / 100) {
                egg.ends(TrueFate.PIPPED_DEAD, (int) Math.floor(egg.hatchDays));
            }
        }
        if (cracked < losses.crackedPct() / 100) {
            egg.ends(TrueFate.CRACKED, 1);
        } else if (rotten < losses.contaminatedPct() / 100) {
            int day = FIRST_ROT_DAY + (int) (when * (LAST_ROT_DAY - FIRST_ROT_DAY + 1));
            egg.ends(TrueFate.CONTAMINATED, day);
        }
        return egg;
    }

    private static int earlyDay(DayRange days, double u) {
        int length = days.toDay() - days.fromDay() + 1;
        int quarter = 0;
        while (u >= EARLY_QUARTERS[quarter] && quarter < EARLY_QUARTERS.length - 1) {
            quarter++;
        }
        return days.fromDay() + quarter * length / EARLY_QUARTERS.length;
    }

    private static int within(DayRange days, double u) {
        return days.fromDay() + (int) (u * (days.toDay() - days.fromDay() + 1));
    }

    /** What befalls a whole tray: the power cuts of its time, and a rotten egg that bursts. */
    void misfortunes(Load load, ZonedDateTime setAt) {
        var bird = farm.bird(load.species);
        for (var cut : farm.truth.powerCuts()) {
            int age = (int) ChronoUnit.DAYS.between(setAt.toLocalDate(), farm.from.plusDays(cut.day()));
            if (age >= 0 && age <= bird.periodDays()) {
                var random = farm.streams.of("power cut", cut.day(), load.set, load.tray);
                double pctPerHour = switch (bird.classOn(age)) {
                    case EARLY_DEAD -> cut.earlyPctPerHour();
                    case MID_DEAD -> cut.midPctPerHour();
                    default -> cut.latePctPerHour();
                };
                double dies = 1 - Math.pow(1 - pctPerHour / 100, cut.hours());
                for (var egg : load.eggs) {
                    boolean struck = Draw.chance(random, dies);
                    if (struck && egg.isAliveOn(age)) {
                        egg.ends(stage(bird, age), Math.max(1, age));
                    }
                }
            }
        }
        burst(load);
    }

    private static TrueFate stage(Bird bird, int age) {
        return switch (bird.classOn(age)) {
            case EARLY_DEAD -> TrueFate.EARLY_DEAD;
            case MID_DEAD -> TrueFate.MID_DEAD;
            default -> TrueFate.LATE_DEAD;
        };
    }

    private void burst(Load load) {
        var burst = farm.truth.burst();
        var random = farm.streams.of("burst", load.set, load.tray);
        if (!Draw.chance(random, burst.trayPct() / 100)) {
            return;
        }
        int day = Draw.between(random, FIRST_ROT_DAY + 3, LAST_ROT_DAY);
        int first = random.nextInt(load.eggs.size());
        int struck = 1 + Draw.poisson(random, burst.neighbours());
        for (int i = first; i < Math.min(load.eggs.size(), first + struck); i++) {
            var egg = load.eggs.get(i);
            if (egg.endDay > day || egg.end == TrueFate.INFERTILE) {
                egg.ends(TrueFate.CONTAMINATED, day);
            }
        }
    }
}
