package eggwright.egg.shell;

import eggwright.units.Pressure;
import eggwright.units.Temperature;

/**
 * How the conductance of one shell moves with the air it is in: G(P, T) = G0 (P0/P) (T/T0)^n, with P0 = 101.325 kPa and
 * T0 = 310.65 K, equation (3.2) of {@code docs/models/weight-loss.md}.
 *
 * <p>Source: Fick's law. The pressure part: Rahn and others 1977, Sotherland and others 1980 (abstracts read). The
 * exponent is one less than that of the diffusivity, which is 1.75 (Monteith and Unsworth, seen in a later work), 1.81
 * (Massman 1998, from memory) or 1.94 (Pruppacher and Klett, from memory): 0.75 to 0.94.
 *
 * @param temperatureExponent n, 0 to 1
 */
public record Diffusion(double temperatureExponent) {
    /** For histories that hold both store and machine: 6 % between 15 and 37.5 °C. */
    public static final Diffusion OF_VAPOUR = new Diffusion(0.8);

    /** For stages in one machine, where temperature hardly moves the shell. */
    public static final Diffusion WITHOUT_TEMPERATURE = new Diffusion(0);

    /** The conductance at these conditions, over that at the reference conditions. */
    public double factor(Conditions conditions) {
        double pressure = Conditions.REFERENCE.barometer().kilopascals()
                / conditions.barometer().kilopascals();
        double warmth = conditions.egg().kelvin() / Conditions.REFERENCE.egg().kelvin();
        return pressure * Math.pow(warmth, temperatureExponent);
    }

    /**
     * What a conductance is spoken at.
     *
     * @param barometer pressure of the air
     * @param egg temperature of the egg
     */
    public record Conditions(Pressure barometer, Temperature egg) {
        /** Sea level, and an egg at 37.5 °C. */
        public static final Conditions REFERENCE = new Conditions(Pressure.SEA_LEVEL, Temperature.ofCelsius(37.5));
    }
}
