package eggwright.forecast.level;

import eggwright.forecast.chance.Grid;

/**
 * The level of one species at one stage, as published farms have it: a normal, and what they say beyond it.
 *
 * @param mean in logits from the published losses
 * @param spread of farms, in logits
 * @param beyond the published density over that of the normal, in logs, by grid point
 */
record Published(double mean, double spread, double[] beyond) {
    static Published of(double[] density) {
        double total = 0;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < Grid.POINTS; i++) {
            total += density[i];
            sum += density[i] * Grid.at(i);
            squares += density[i] * Grid.at(i) * Grid.at(i);
        }
        double mean = sum / total;
        double spread = Math.sqrt(squares / total - mean * mean);
        var beyond = new double[Grid.POINTS];
        for (int i = 0; i < Grid.POINTS; i++) {
            double z = (Grid.at(i) - mean) / spread;
            beyond[i] = Math.log(density[i] * spread / total) + z * z / 2;
        }
        return new Published(mean, spread, beyond);
    }
}
