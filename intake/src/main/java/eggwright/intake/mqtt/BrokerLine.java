package eggwright.intake.mqtt;

import eggwright.intake.message.Intake;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.random.RandomGenerator;
import org.eclipse.paho.client.mqttv3.MqttException;
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
                var lost = "";
                try (var line = OpenLine.to(broker, intake, random)) {
                    LOG.debug("Listening to {}", broker);
                    state = new BrokerState.Listening(clock.instant());
                    lost = line.untilLost(closed);
                }
                if (isOpen()) {
                    since = clock.instant();
                    tries = away(BrokerState.Why.LOST, lost, since, 0);
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
