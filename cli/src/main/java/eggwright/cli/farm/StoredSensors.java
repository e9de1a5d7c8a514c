package eggwright.cli.farm;

import eggwright.intake.sensor.Sensor;
import eggwright.intake.sensor.SensorBook;
import eggwright.store.SensorRow;
import eggwright.store.SensorStore;
import java.util.List;

/** The farm's sensors in the book's file. */
record StoredSensors(SensorStore store) implements SensorBook {
    @Override
    public List<Sensor> all() {
        return store.all().stream()
                .map(row -> new Sensor(row.sensor(), row.channel(), row.tokenSha256(), row.added(), row.revoked()))
                .toList();
    }

    @Override
    public void keep(Sensor sensor) {
        store.keep(
                new SensorRow(sensor.id(), sensor.channel(), sensor.tokenSha256(), sensor.added(), sensor.revoked()));
    }
}
