package eggwright.intake.sensor;

import java.util.List;

/** Where sensors are kept. No token is ever given to it, only its hash. */
public interface SensorBook {
    /** All that were ever added, those that were revoked among them, by when they were. */
    List<Sensor> all();

    /** Keeps a sensor in the place of what was kept of it before; when this returns it survives a power cut. */
    void keep(Sensor sensor);
}
