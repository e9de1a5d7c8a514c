package eggwright.intake.mqtt;

import eggwright.intake.message.Complaint;
import eggwright.intake.message.Delivery;
import eggwright.intake.message.Intake;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HexFormat;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.random.RandomGenerator;
import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Listens to a broker (MQTT 3.1.1) until it is closed. A line that breaks is made anew for ever, at first after a second,
 * then more and more seldom.
 *
 * <p>A message is acknowledged to the broker when its readings are on the disk, or were refused and counted. The session
 * is a clean one: what a broker would hold back while the desk is away are numbers without their times.
 */
public final class BrokerLine implements AutoCloseable {
    static final Duration FIRST_PAUSE = Duration.ofSeconds(1);
    static final Duration LONGEST_PAUSE = Duration.ofMinutes(1);

    private static final Logger LOG = LoggerFactory.getLogger(BrokerLine.class);
    private static final int AT_LEAST_ONCE = 1;
    private static final int SUBSCRIPTION_FAILED = 0x80;
    private static final int KEEP_ALIVE_SECONDS = 30;
    private static final int ANSWER_SECONDS = 10;

    private final Broker broker;
    private final Intake intake;
    private final InstantSource clock;
    private final RandomGenerator random;
    private final CountDownLatch closed = new CountDownLatch(1);
    private final Thread thread;
    private volatile BrokerState state = new BrokerState.Beginning();

    private BrokerLine(Broker broker, Intake intake, InstantSource clock, RandomGenerator random) {
        this.broker = broker;
        this.intake = intake;
        this.clock = clock;
        this.random = random;
        this.thread = Thread.ofPlatform().daemon().name("broker").unstarted(this::stay);
    }

    /** Begins to listen, and returns at once: the broker need not be there. */
    public static BrokerLine to(Broker broker, Intake intake, InstantSource clock, RandomGenerator random) {
        var line = new BrokerLine(broker, intake, clock, random);
        line.thread.start();
        return line;
    }

    public Broker broker() {
        return broker;
    }

    public BrokerState state() {
        return state;
    }

    private void stay() {
        int tries = 0;
        Instant since = clock.instant();
        while (isOpen()) {
            try {
                var lost = new Lost();
                try (var line = open(lost)) {
                    LOG.debug("Listening to {} as {}", broker, line.client().getClientId());
                    state = new BrokerState.Listening(clock.instant());
                    lost.orClosed(closed);
                }
                if (isOpen()) {
                    since = clock.instant();
                    tries = away(BrokerState.Why.LOST, lost.detail(), since, 0);
                }
            } catch (MqttException | BrokerRefused refused) {
                if (tries == 0) {
                    since = clock.instant();
                }
                tries = away(Reasons.why(refused), Reasons.detail(refused), since, tries);
            } catch (RuntimeException fault) {
                LOG.warn("The line to {} broke", broker, fault);
                tries = away(BrokerState.Why.OTHER, String.valueOf(fault), since, tries);
            }
        }
    }

    private boolean isOpen() {
        return closed.getCount() > 0;
    }

    /** Waits out the pause; it grows with each try in a row, with some chance in it, so that many desks do not come at once. */
    private int away(BrokerState.Why why, String detail, Instant since, int tries) {
        var pause = pause(tries, random.nextDouble());
        state = new BrokerState.Away(
                why, detail, since, tries + 1, clock.instant().plus(pause));
        try {
            var unused = closed.await(pause.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException hurried) {
            closed.countDown();
        }
        return tries + 1;
    }

    /** @param chance from 0 up to 1 */
    static Duration pause(int tries, double chance) {
        long doubled = FIRST_PAUSE.toMillis() << Math.min(tries, 10);
        return Duration.ofMillis((long) (Math.min(doubled, LONGEST_PAUSE.toMillis()) * (0.75 + chance / 4)));
    }

    /** A line that is open. */
    private record Open(MqttAsyncClient client) implements AutoCloseable {
        @Override
        public void close() {
            try {
                if (client.isConnected()) {
                    client.disconnectForcibly(0, 1_000);
                }
                client.close(true);
            } catch (MqttException gone) {
                LOG.debug("The line was gone already", gone);
            }
        }
    }

    /** A client of its own for each line: none carries anything over from a line that broke. */
    private Open open(Lost lost) throws MqttException, BrokerRefused {
        var name = new byte[6];
        random.nextBytes(name);
        var client = new MqttAsyncClient(
                broker.clientUri(), "eggwright-" + HexFormat.of().formatHex(name), new MemoryPersistence());
        var line = new Open(client);
        try {
            client.setManualAcks(true);
            client.setCallback(new Hearing(client, lost));
            client.connect(options()).waitForCompletion(TimeUnit.SECONDS.toMillis(ANSWER_SECONDS));
            var subscribed = client.subscribe(broker.filter(), AT_LEAST_ONCE);
            subscribed.waitForCompletion(TimeUnit.SECONDS.toMillis(ANSWER_SECONDS));
            if (subscribed.getGrantedQos()[0] == SUBSCRIPTION_FAILED) {
                throw new BrokerRefused(BrokerState.Why.TOPIC_REFUSED, broker.filter());
            }
            return line;
        } catch (MqttException | BrokerRefused | RuntimeException refused) {
            line.close();
            throw refused;
        }
    }

    private MqttConnectOptions options() throws BrokerRefused {
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

    /** Told once when the line breaks. */
    private static final class Lost {
        private final CountDownLatch lost = new CountDownLatch(1);
        private volatile String detail = "";

        void tell(String why) {
            detail = why;
            lost.countDown();
        }

        String detail() {
            return detail;
        }

        void orClosed(CountDownLatch closed) {
            try {
                while (!lost.await(200, TimeUnit.MILLISECONDS)) {
                    if (closed.getCount() == 0) {
                        return;
                    }
                }
            } catch (InterruptedException hurried) {
                closed.countDown();
            }
        }
    }

    private final class Hearing implements MqttCallback {
        private final MqttAsyncClient client;
        private final Lost lost;

        Hearing(MqttAsyncClient client, Lost lost) {
            this.client = client;
            this.lost = lost;
        }

        @Override
        public void connectionLost(Throwable cause) {
            lost.tell(Reasons.detail(cause));
        }

        /** The client ends the line at whatever is thrown here, so nothing is. */
        @Override
        public void messageArrived(String topic, MqttMessage message) {
            try {
                hear(topic, message);
                client.messageArrivedComplete(message.getId(), message.getQos());
            } catch (MqttException | RuntimeException fault) {
                LOG.error("A message of {} could not be heard", broker, fault);
            }
        }

        @Override
        public void deliveryComplete(IMqttDeliveryToken token) {}
    }

    private void hear(String topic, MqttMessage message) {
        var token = topic.substring(topic.lastIndexOf('/') + 1);
        var delivery =
                message.isRetained() ? Delivery.RETAINED : message.isDuplicate() ? Delivery.REPEATED : Delivery.LIVE;
        switch (intake.take(token, message.getPayload(), delivery)) {
            case Intake.Outcome.Kept kept -> LOG.trace("{} told", kept.by().name());
            case Intake.Outcome.Refused(Complaint why) -> LOG.debug("A message was refused: {}", why.kind());
        }
    }

    @Override
    public void close() {
        closed.countDown();
        try {
            thread.join(Duration.ofSeconds(2));
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }
}
