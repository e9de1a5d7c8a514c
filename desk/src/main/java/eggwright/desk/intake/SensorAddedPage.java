package eggwright.desk.intake;

import java.util.List;

/**
 * A token, shown once.
 *
 * @param what the sensor measures, and where
 * @param addresses where it sends to over HTTP
 * @param example a command that sends one reading
 * @param broker where it sends to by MQTT; empty where no broker is listened to
 * @param topic of MQTT, with the token in it; empty where no broker is listened to
 */
public record SensorAddedPage(
        String name, String what, String token, List<String> addresses, String example, String broker, String topic) {
    public SensorAddedPage {
        addresses = List.copyOf(addresses);
    }
}
