package eggwright.desk.machine;

import eggwright.units.Altitude;

/** A height above the sea as it was noted, without a naught behind the point. */
final class Heights {
    private Heights() {}

    /** In a sentence. */
    static String say(Altitude height) {
        return number(height) + "\u00a0" + height.unit().symbol();
    }

    /** In a field, where it can be read again. */
    static String typed(Altitude height) {
        return number(height) + height.unit().symbol();
    }

    private static String number(Altitude height) {
        double number = height.number();
        return number == Math.rint(number) ? Long.toString(Math.round(number)) : Double.toString(number);
    }
}
