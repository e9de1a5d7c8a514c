package eggwright.intake.mqtt;

import eggwright.intake.message.Delivery;
import eggwright.intake.message.Intake;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Hands on what comes by one line, and notices when it breaks. */
final class Hearing implements MqttCallback {
    private static final Logger LOG = LoggerFactory.getLogger(Hearing.class);

    private final MqttAsyncClient client;
    private final Intake intake;
    private final CountDownLatch lost = new CountDownLatch(1);
    private volatile String why = "";

    Hearing(MqttAsyncClient client, Intake intake) {
        this.client = client;
        this.intake = intake;
    }

    boolean isLostWithin(long millis) throws InterruptedException {
        return lost.await(millis, TimeUnit.MILLISECONDS);
    }

    /** In the library's words; empty where it gave none. */
    String lostBecause() {
        return why;
    }

    @Override
    public void connectionLost(Throwable cause) {
        why = Reasons.detail(cause);
        lost.countDown();
    }

    /** The library ends the line at whatever is thrown here, so nothing is. */
    @Override
    public void messageArrived(String topic, MqttMessage message) {
        try {
            var token = topic.substring(topic.lastIndexOf('/') + 1);
            // What became of it is counted there, and shown on the page of the sensors.
            var outcome = intake.take(token, message.getPayload(), delivery(message));
            LOG.trace("{}", outcome);
            client.messageArrivedComplete(message.getId(), message.getQos());
        } catch (MqttException | RuntimeException fault) {
            LOG.error("A message could not be heard", fault);
        }
    }

    private static Delivery delivery(MqttMessage message) {
        if (message.isRetained()) {
            return Delivery.RETAINED;
        }
        return message.isDuplicate() ? Delivery.REPEATED : Delivery.LIVE;
    }

    @Override
    public void deliveryComplete(IMqttDeliveryToken token) {}
}
