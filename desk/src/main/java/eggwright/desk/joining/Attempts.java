package eggwright.desk.joining;

import io.github.bucket4j.Bandwidth;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.TimeMeter;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** Counts tries against {@link Limits}. An address of version 6 counts with its whole network of 64 bits, since a device chooses the rest. */
final class Attempts {
    /** So many addresses are told apart; who is forgotten is still held by what all may try. */
    private static final int MOST_ADDRESSES = 1000;

    private static final Pattern DIGITS = Pattern.compile("[0-9a-fA-F:.]+");
    private static final int NETWORK_BYTES = 8;

    private final Limits limits;
    private final TimeMeter meter;
    private final Bucket all;
    private final Map<String, Bucket> each = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
            return size() > MOST_ADDRESSES;
        }
    };

    Attempts(Limits limits, InstantSource clock) {
        this.limits = limits;
        this.meter = meter(clock);
        this.all = bucket(limits.ofAll(), limits.span());
    }

    /** Counts one try. False where it may not be made; then it is not counted for all, so that one who hammers keeps nobody else out. */
    synchronized boolean mayTry(String address) {
        var own = each.computeIfAbsent(network(address), network -> bucket(limits.ofOne(), limits.span()));
        return own.tryConsume(1) && all.tryConsume(1);
    }

    private Bucket bucket(int tries, Duration span) {
        return Bucket.builder()
                .withCustomTimePrecision(meter)
                .addLimit(Bandwidth.builder()
                        .capacity(tries)
                        .refillGreedy(tries, span)
                        .build())
                .build();
    }

    private static TimeMeter meter(InstantSource clock) {
        return new TimeMeter() {
            @Override
            public long currentTimeNanos() {
                return Duration.between(Instant.EPOCH, clock.instant()).toNanos();
            }

            @Override
            public boolean isWallClockBased() {
                return true;
            }
        };
    }

    private static String network(String address) {
        if (!DIGITS.matcher(address).matches()) {
            return address;
        }
        try {
            // Digits, never a name: nothing is looked up.
            return InetAddress.getByName(address) instanceof Inet6Address six
                    ? HexFormat.of().formatHex(six.getAddress(), 0, NETWORK_BYTES)
                    : address;
        } catch (UnknownHostException notAnAddress) {
            return address;
        }
    }
}
