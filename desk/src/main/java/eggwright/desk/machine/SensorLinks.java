package eggwright.desk.machine;

import eggwright.book.entry.SensorAt;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;

/** Links to the forms of a sensor, with all filled in that is known. */
record SensorLinks(String path) {
    static SensorLinks to(String kind, SensorAt sensor) {
        var machine = sensor.machine();
        var link = new SensorLinks("/notes/" + kind + "?sensor_place=" + SensorWords.word(sensor.place()));
        return (machine == null ? link : link.with("machine", machine.text()))
                .with("sensor", sensor.sensor())
                .with("quantity", sensor.quantity().word());
    }

    SensorLinks with(String field, String value) {
        return new SensorLinks(path + "&" + field + "=" + MachinePaths.encoded(value));
    }

    /** A moment as a form has it, by the farm's clock. */
    static String moment(Instant at, ZoneId zone) {
        return at.atZone(zone).toLocalDateTime().truncatedTo(ChronoUnit.MINUTES).toString();
    }

    /** The same, or the minute after: so that seconds are not cut off at the end. */
    static String momentAfter(Instant at, ZoneId zone) {
        var minute = at.truncatedTo(ChronoUnit.MINUTES);
        return moment(minute.equals(at) ? at : minute.plus(1, ChronoUnit.MINUTES), zone);
    }
}
