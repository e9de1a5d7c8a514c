package eggwright.intake.mqtt;

import eggwright.intake.message.Intake;
import java.util.HexFormat;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.random.RandomGenerator;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** One line to a broker, from its making until it breaks or is closed. A client of its own for each: none carries anything over. */
final class OpenLine implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(OpenLine.class);
    private static final int AT_LEAST_ONCE = 1;
    private static final int SUBSCRIPTION_FAILED = 0x80;
    private static final int KEEP_ALIVE_SECONDS = 30;
    private static final int ANSWER_SECONDS = 10;
    private static final long ANSWER_MILLIS = TimeUnit.SECONDS.toMillis(ANSWER_SECONDS);
    private static final long LOOK_MILLIS = 200;
    private static final int NAME_BYTES = 6;

    private final MqttAsyncClient client;
    private final Hearing hearing;

    private OpenLine(MqttAsyncClient client, Hearing hearing) {
        this.client = client;
        this.hearing = hearing;
    }

    /** Connects, and listens: when this returns, what is sent there arrives. */
    static OpenLine to(Broker broker, Intake intake, RandomGenerator random) throws MqttException, BrokerRefused {
        var name = new byte[NAME_BYTES];
        random.nextBytes(name);
        var client = new MqttAsyncClient(
                broker.clientUri(), "eggwright-" + HexFormat.of().formatHex(name), new MemoryPersistence());
        var line = new OpenLine(client, new Hearing(client, intake));
        try {
            line.listen(broker);
            return line;
        } catch (MqttException | BrokerRefused | RuntimeException refused) {
            line.close();
            throw refused;
        }
    }

    private void listen(Broker broker) throws MqttException, BrokerRefused {
        client.setManualAcks(true);
        client.setCallback(hearing);
        client.connect(options(broker)).waitForCompletion(ANSWER_MILLIS);
        var subscribed = client.subscribe(broker.filter(), AT_LEAST_ONCE);
        subscribed.waitForCompletion(ANSWER_MILLIS);
        if (subscribed.getGrantedQos()[0] == SUBSCRIPTION_FAILED) {
            throw new BrokerRefused(BrokerState.Why.TOPIC_REFUSED, broker.filter());
        }
    }

    private static MqttConnectOptions options(Broker broker) throws BrokerRefused {
        var options = new MqttConnectOptions();
        options.setMqttVersion(MqttConnectOptions.MQTT_VERSION_3_1_1);
        options.setCleanSession(true);
        options.setAutomaticReconnect(false);
        options.setKeepAliveInterval(KEEP_ALIVE_SECONDS);
        options.setConnectionTimeout(ANSWER_SECONDS);
        broker.user().ifPresent(options::setUserName);
        broker.password().map(String::toCharArray).ifPresent(options::setPassword);
        if (broker.authority().isPresent()) {
            options.setSocketFactory(Trust.in(broker.authority().get()));
        }
        return options;
    }

    /** Waits until the line breaks, and gives the reason in the library's words; or until nobody wants it any more. */
    String untilLost(CountDownLatch closed) {
        try {
            while (closed.getCount() > 0 && !hearing.isLostWithin(LOOK_MILLIS)) {
                // Looks again.
            }
        } catch (InterruptedException hurried) {
            closed.countDown();
        }
        return hearing.lostBecause();
    }

    @Override
    public void close() {
        try {
            if (client.isConnected()) {
                client.disconnectForcibly(0, TimeUnit.SECONDS.toMillis(1));
            }
            client.close(true);
        } catch (MqttException gone) {
            LOG.debug("The line was gone already", gone);
        }
    }
}
