package eggwright.climate.weight;

import eggwright.book.entry.WeighedWhat;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.climate.air.AirHistory;
import eggwright.climate.air.AirHour;
import eggwright.climate.air.AirTold;
import eggwright.climate.air.SetPoint;
import eggwright.climate.air.Surroundings;
import eggwright.egg.air.MoistAir;
import eggwright.egg.air.StandardAtmosphere;
import eggwright.egg.air.Ventilation;
import eggwright.units.Altitude;
import eggwright.units.Humidity;
import eggwright.units.Temperature;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** A setter whose eggs lose what the law says, weighed on a kitchen scale. */
final class Setter {
    static final Instant SET = Instant.parse("2027-04-05T13:00:00Z");
    static final Temperature WARM = Temperature.ofCelsius(37.5);
    static final SetName NAME = new SetName("14");

    private final SplittableRandom random;
    private final Surroundings surroundings;
    private final double share;
    private final double[] trayGrams;
    private final double[] setGrams;
    private final int[] eggs;
    private final List<AirHour> air = new ArrayList<>();
    private final List<List<MeanMass>> weighed = new ArrayList<>();
    private Instant now = SET;

    /** @param share of the set mass lost each kPa day, on the mean of the eggs */
    Setter(SplittableRandom random, Surroundings surroundings, double share, int trays, int eggsInEach) {
        this.random = random;
        this.surroundings = surroundings;
        this.share = share;
        trayGrams = new double[trays];
        setGrams = new double[trays];
        eggs = new int[trays];
        for (int tray = 0; tray < trays; tray++) {
            eggs[tray] = eggsInEach;
            setGrams[tray] = 32 * (1 + 0.02 * normal());
            trayGrams[tray] = setGrams[tray];
            weighed.add(new ArrayList<>());
        }
    }

    static Surroundings at(double metres) {
        return new Surroundings(StandardAtmosphere.at(Altitude.ofMetres(metres)).pressure(), Ventilation.ASPIRATED);
    }

    double normal() {
        double sum = -6;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return sum;
    }

    Instant now() {
        return now;
    }

    List<AirHour> air() {
        return air;
    }

    /** Runs on at a humidity; shells of each tray differ as those of its eggs do. */
    Setter run(double days, double humidityPct) {
        var until = now.plus(Duration.ofMinutes(Math.round(days * 1440)));
        air.addAll(AirHistory.of(
                AirTold.NOTHING, new SetPoint(WARM, new Humidity(humidityPct)), surroundings, now, until));
        double exposure = Exposure.perDay(MoistAir.of(WARM, new Humidity(humidityPct), surroundings.barometer()))
                * Duration.between(now, until).toMinutes()
                / 1440.0;
        for (int tray = 0; tray < trayGrams.length; tray++) {
            trayGrams[tray] -= setGrams[tray] * share * exposure;
        }
        now = until;
        return this;
    }

    /** On a scale that shows whole grams and is a gram or so off. */
    Setter weigh() {
        for (int tray = 0; tray < trayGrams.length; tray++) {
            double shown = Math.rint(trayGrams[tray] * eggs[tray] + normal());
            double error = Math.hypot(1 / Math.sqrt(12), 0.0005 * shown) / eggs[tray];
            weighed.get(tray).add(new MeanMass(now, shown / eggs[tray], error, eggs[tray]));
        }
        return this;
    }

    double truePct() {
        double sum = 0;
        for (int tray = 0; tray < trayGrams.length; tray++) {
            sum += 100 * (1 - trayGrams[tray] / setGrams[tray]);
        }
        return sum / trayGrams.length;
    }

    List<MassSeries> series() {
        var series = new ArrayList<MassSeries>();
        for (int tray = 0; tray < weighed.size(); tray++) {
            series.add(new MassSeries(
                    NAME, new TrayName(String.valueOf(tray + 1)), WeighedWhat.WHOLE_TRAY, weighed.get(tray)));
        }
        return series;
    }
}
