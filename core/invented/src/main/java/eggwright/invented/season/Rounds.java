package eggwright.invented.season;

import eggwright.book.entry.ClimateNoted;
import eggwright.book.entry.IncidentKind;
import eggwright.book.entry.IncidentNoted;
import eggwright.book.entry.MachineKind;
import eggwright.book.entry.Remarked;
import eggwright.book.entry.RoundCheck;
import eggwright.book.name.MachineName;
import eggwright.invented.chance.Draw;
import eggwright.invented.truth.MachineTruth;
import eggwright.units.Humidity;
import eggwright.units.Temperature;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.random.RandomGenerator;

/** The rounds twice a day, what goes wrong, and what the keepers remark. */
final class Rounds {
    static final List<LocalTime> HOURS = List.of(LocalTime.of(7, 0), LocalTime.of(18, 30));

    private static final List<String> REMARKS = List.of(
            "First warm day. Birds quiet.",
            "Fox along the lower fence last night; pens not breached.",
            "Shells a little thin this week. Grit topped up.",
            "Cleaned the lamp glass.",
            "New bag of breeder feed opened.",
            "Rain all day, eggs from the ditch side muddy.",
            "Turner chain oiled.",
            "Two cocks sparring through the wire; board put up.",
            "Humidifier wick changed.",
            "Neighbour asks for a hundred chicks next month.",
            "Hawk over the pens at noon, hens under cover.",
            "Egg room door left ajar overnight; 16 C at six.");

    private final Farm farm;

    Rounds(Farm farm) {
        this.farm = farm;
    }

    void note(LocalDate from, LocalDate to) {
        for (var day = from; !day.isAfter(to); day = day.plusDays(1)) {
            for (var hour : HOURS) {
                int minute = 0;
                for (var machine : farm.truth.machines()) {
                    var random = farm.streams.of("round", machine.name(), day, hour);
                    if (!Draw.chance(random, farm.truth.notebook().roundMissedPct() / 100)) {
                        farm.notebook.note(farm.at(day, hour).plusMinutes(minute), reading(machine, random));
                    }
                    minute += 2;
                }
            }
            remark(day);
        }
        powerCuts();
    }

    private static ClimateNoted reading(MachineTruth machine, RandomGenerator random) {
        boolean hatches = machine.does() == MachineKind.HATCHER;
        double dry = (hatches ? 99.0 : 99.6) + 0.15 * random.nextGaussian();
        double humidity = (hatches ? 70 : 52) + 2 * random.nextGaussian();
        return new ClimateNoted(
                new MachineName(machine.name()),
                null,
                Temperature.ofFahrenheit(Math.rint(dry * 10) / 10),
                null,
                new Humidity(Math.rint(Math.clamp(humidity, 20, 95))),
                hatches
                        ? List.of(RoundCheck.WATER_FILLED, RoundCheck.VENTS_OPEN)
                        : List.of(RoundCheck.WATER_FILLED, RoundCheck.TURNER_TILTED, RoundCheck.VENTS_OPEN),
                "");
    }

    private void remark(LocalDate day) {
        var random = farm.streams.of("remarks", day);
        if (Draw.chance(random, farm.truth.notebook().remarksPerWeek() / 7)) {
            farm.notebook.note(farm.at(day, LocalTime.of(20, 40)), new Remarked(null, Draw.oneOf(random, REMARKS)));
        }
    }

    private void powerCuts() {
        for (var cut : farm.truth.powerCuts()) {
            var start = farm.at(farm.from.plusDays(cut.day()), cut.at());
            var end = start.plusMinutes(Math.round(cut.hours() * 60));
            farm.notebook.note(
                    start,
                    end.plusMinutes(25),
                    new IncidentNoted(
                            IncidentKind.POWER_CUT, null, end.toOffsetDateTime(), null, "Power off on the whole lane"));
        }
    }
}
