package eggwright.desk.machine;

import eggwright.book.name.MachineName;
import eggwright.book.name.SetName;
import eggwright.climate.air.AirHour;
import eggwright.climate.air.KnownBy;
import eggwright.climate.air.SetPoint;
import eggwright.climate.air.Surroundings;
import eggwright.climate.development.HatchExpected;
import eggwright.climate.development.Learnt;
import eggwright.climate.development.Span;
import eggwright.climate.development.When;
import eggwright.climate.machine.MachineNow;
import eggwright.climate.machine.SetInside;
import eggwright.climate.weight.Advising;
import eggwright.climate.weight.Aim;
import eggwright.climate.weight.Estimate;
import eggwright.climate.weight.SetLoss;
import eggwright.climate.weight.Shells;
import eggwright.climate.weight.StorageLoss;
import eggwright.egg.air.MoistAir;
import eggwright.egg.air.Ventilation;
import eggwright.trade.Species;
import eggwright.units.Humidity;
import eggwright.units.Pressure;
import eggwright.units.Temperature;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** A setter at sea level and 99.5 °F, with sets of pheasant eggs in it. */
final class SetterNow {
    static final Instant NOW = Instant.parse("2027-05-12T17:00:00Z");
    static final Surroundings SEA = new Surroundings(Pressure.SEA_LEVEL, Ventilation.ASPIRATED);
    private static final Temperature HEAT = Temperature.ofFahrenheit(99.5);
    /** Of such shells eggs lose a little under 0.6 % a day at 52 %. */
    private static final double SHARE = 0.0019;

    private SetterNow() {}

    static SetInside set(String name, int day, double lostPct, Shells.From from) {
        var loss = new SetLoss(
                new SetName(name),
                Species.PHEASANT,
                from == Shells.From.WEIGHED ? 54 : 0,
                List.of(),
                new Shells(SHARE, SHARE / 20, from),
                new Estimate(lostPct, lostPct - 0.4, lostPct + 0.4),
                List.of());
        var then = new When(NOW, NOW.plusSeconds(3600), NOW.plusSeconds(7200));
        var hatch = new HatchExpected(then, then, then, then, new Span(0, 1, 2), new Span(0.1, 0.2, 0.3));
        var start = NOW.minus(Duration.ofDays(day));
        return new SetInside(
                new SetName(name),
                Species.PHEASANT,
                day,
                54,
                3,
                start,
                NOW,
                hatch,
                Learnt.NOTHING,
                loss,
                new StorageLoss(3, new Estimate(0.5, 0.3, 0.7), KnownBy.READINGS),
                List.of(),
                KnownBy.READINGS,
                day * 24L,
                day * 24L);
    }

    static MachineNow of(double humidityPct, KnownBy wetness, List<SetInside> inside) {
        var air = MoistAir.of(HEAT, new Humidity(humidityPct), Pressure.SEA_LEVEL);
        var point = new SetPoint(HEAT, new Humidity(humidityPct));
        var advised = inside.stream()
                .map(s -> new Advising.InMachine(
                        s.loss(), Aim.ofTrade(Species.PHEASANT), s.startedAt().plus(Duration.ofDays(21)), s.eggs()))
                .toList();
        return new MachineNow(
                new MachineName("Setter"),
                new AirHour(NOW.minusSeconds(3600), NOW, air, KnownBy.READINGS, wetness),
                point,
                inside,
                Advising.of(advised, point, SEA, Advising.LIMITS, NOW));
    }
}
