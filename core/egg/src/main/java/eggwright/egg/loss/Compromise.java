package eggwright.egg.loss;

import eggwright.units.Humidity;
import java.util.List;

/**
 * One humidity for eggs of several ages in one machine: the one with the least sum, over all eggs, of the squared distance
 * from the loss that each set should reach. A point too much and a point too little count alike.
 *
 * @param humidity to run, inside the limits
 * @param lossesPct final loss of each set at it, in the order given
 */
public record Compromise(Humidity humidity, List<Double> lossesPct) {
    public Compromise {
        lossesPct = List.copyOf(lossesPct);
    }

    /**
     * One set in the machine.
     *
     * @param eggs in it, above 0
     * @param wantedPct final loss wanted
     */
    public record Party(HumidityLine line, double wantedPct, int eggs) {}

    /**
     * The compromise of some sets: a weighted mean of what each needs, by eggs and by how much humidity moves them.
     *
     * @throws IllegalArgumentException if there is no set
     */
    public static Compromise of(List<Party> parties, SafeLimits limits) {
        double together = 0;
        double spread = 0;
        for (var party : parties) {
            double pull = party.eggs() * squared(party.line().pctLessPerPoint());
            together += pull * party.line().humidityPct(party.wantedPct());
            spread += pull;
        }
        if (!(spread > 0)) {
            throw new IllegalArgumentException("There is no set to find a humidity for");
        }
        var humidity = limits.nearest(together / spread);
        return new Compromise(
                humidity,
                parties.stream()
                        .map(party -> party.line().lossPct(humidity.pct()))
                        .toList());
    }

    private static double squared(double number) {
        return number * number;
    }
}
