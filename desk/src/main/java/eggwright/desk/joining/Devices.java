package eggwright.desk.joining;

import eggwright.book.name.DeviceName;
import eggwright.book.name.Name;
import eggwright.desk.who.Role;
import eggwright.desk.who.Visitor;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Who has joined. Whatever changes is in the book before it holds, and holds from the next request on.
 *
 * <p>Safe for many threads. It is the only one that writes to its book.
 */
public final class Devices {
    /** How long a code can be used. */
    public static final Duration CODE_LIVES = Duration.ofMinutes(10);
    /** How long a device stays in that is not seen: from one season well into the next. Browsers keep a cookie no longer. */
    public static final Duration STAYS_UNSEEN = Duration.ofDays(400);
    /** How long the owner stays signed in. */
    public static final Duration SIGNED_IN = Duration.ofHours(12);
    /** How many codes can stand at once. */
    static final int MOST_CODES = 10;

    /** Characters of the shortest passphrase that is taken. */
    public static final int SHORTEST_PASSPHRASE = Passphrases.SHORTEST;
    /** Characters of the longest. */
    public static final int LONGEST_PASSPHRASE = Passphrases.LONGEST;

    private static final Duration SEEN_TO = Duration.ofMinutes(5);
    private static final Duration COOKIE_RENEWED = Duration.ofDays(1);
    private static final int ID_BYTES = 8;

    private static final Logger LOG = LoggerFactory.getLogger(Devices.class);

    private final DeviceBook book;
    private final InstantSource clock;
    private final RandomGenerator random;
    private @Nullable Map<String, Device> byToken;
    /** These three are made when they are first needed: a desk for one machine alone never needs their libraries. */
    private @Nullable Attempts codes;

    private @Nullable Attempts passphrases;
    private @Nullable Passphrases hashing;

    /** @param random hard to guess */
    public Devices(DeviceBook book, InstantSource clock, RandomGenerator random) {
        this.book = book;
        this.clock = clock;
        this.random = random;
    }

    /** Whether the cookie of a device is to be sent anew. */
    public enum Cookie {
        AS_IT_IS,
        TO_BE_RENEWED
    }

    /** Who holds a token. */
    public record Known(Visitor visitor, Cookie cookie) {}

    /** What became of an attempt to come in. */
    public sealed interface Entrance {
        /** In, with the token that the device has to keep. */
        record In(Device device, String token) implements Entrance {}

        /** The code or passphrase is not right, or not any more. */
        record NotRight() implements Entrance {}

        /** It was tried too often; later again. */
        record TooOften() implements Entrance {}
    }

    /** What became of a code that was asked for. */
    public sealed interface Invitation {
        /** The code, to be shown once. */
        record Code(String code, Role role, Instant ends) implements Invitation {}

        /** So many codes stand already that no further is given out. */
        record TooMany() implements Invitation {}
    }

    /** Whether the owner has a passphrase. */
    public boolean hasPassphrase() {
        return book.passphrase().isPresent();
    }

    private Map<String, Device> byToken() {
        var known = byToken;
        if (known == null) {
            known = book.all().stream()
                    .collect(Collectors.toMap(Device::tokenSha256, d -> d, (a, b) -> b, HashMap::new));
            byToken = known;
        }
        return known;
    }

    private void keep(Device device) {
        book.keep(device);
        byToken().put(device.tokenSha256(), device);
    }

    /** When a device was seen is worth less than that it can go on: a full disk must not keep a phone from reading. */
    private void keepSeen(Device device) {
        byToken().put(device.tokenSha256(), device);
        try {
            book.keep(device);
        } catch (RuntimeException notKept) {
            LOG.warn("That {} was seen is not kept", device.name(), notKept);
        }
    }

    /** Who holds this token; nobody where it never was one, or its device is out. */
    public synchronized Known known(String token) {
        var device = byToken().get(Secrets.sha256(token));
        var now = clock.instant();
        if (device == null || !device.isIn(now)) {
            return new Known(new Visitor.Nobody(), Cookie.AS_IT_IS);
        }
        var unseen = Duration.between(device.seen(), now);
        if (unseen.compareTo(SEEN_TO) >= 0) {
            keepSeen(device.seenAt(
                    now,
                    switch (device.way()) {
                        case CODE -> now.plus(STAYS_UNSEEN);
                        case PASSPHRASE -> device.ends();
                    }));
        }
        return new Known(
                device.visitor(),
                device.way() == Device.Way.CODE && unseen.compareTo(COOKIE_RENEWED) >= 0
                        ? Cookie.TO_BE_RENEWED
                        : Cookie.AS_IT_IS);
    }

    /** All that ever joined, by when they did. */
    public synchronized List<Device> all() {
        return book.all();
    }

    /** A code for one device, good for {@link #CODE_LIVES}. */
    public synchronized Invitation invite(Role role) {
        var now = clock.instant();
        if (book.codesAt(now) >= MOST_CODES) {
            return new Invitation.TooMany();
        }
        var code = Secrets.code(random);
        book.keep(new DeviceBook.Code(Secrets.sha256(code), role, now, now.plus(CODE_LIVES)));
        return new Invitation.Code(code, role, now.plus(CODE_LIVES));
    }

    /**
     * A device joins by a code. The code is used up.
     *
     * @param address that it asks from
     */
    public synchronized Entrance join(String typed, DeviceName name, String address) {
        if (!codes().mayTry(address)) {
            return new Entrance.TooOften();
        }
        var now = clock.instant();
        return book.take(Secrets.sha256(Secrets.meant(typed)))
                .filter(code -> now.isBefore(code.ends()))
                .<Entrance>map(code -> letIn(free(name), code.role(), Device.Way.CODE, now, now.plus(STAYS_UNSEEN)))
                .orElseGet(Entrance.NotRight::new);
    }

    /**
     * The owner signs in on a device.
     *
     * @param on the device, where it has joined before; else the name that it is given
     * @param address that it asks from
     */
    public Entrance signIn(String passphrase, Visitor on, DeviceName name, String address) {
        if (!passphrases().mayTry(address)) {
            return new Entrance.TooOften();
        }
        var right = book.passphrase().filter(hash -> hashing().fits(passphrase, hash));
        if (right.isEmpty()) {
            return new Entrance.NotRight();
        }
        synchronized (this) {
            var now = clock.instant();
            var called = on instanceof Visitor.Joined joined ? joined.name() : free(name);
            return letIn(called, Role.OWNER, Device.Way.PASSPHRASE, now, now.plus(SIGNED_IN));
        }
    }

    private Entrance letIn(DeviceName name, Role role, Device.Way way, Instant now, Instant ends) {
        var token = Secrets.token(random);
        var bytes = new byte[ID_BYTES];
        random.nextBytes(bytes);
        var id = HexFormat.of().formatHex(bytes);
        var device = new Device(id, name, role, way, Secrets.sha256(token), now, now, ends, null);
        keep(device);
        return new Entrance.In(device, token);
    }

    /** The name, with a number behind it where a device has or had it: entries are told apart by it. */
    private DeviceName free(DeviceName wanted) {
        var taken = book.all().stream()
                .map(d -> d.name().text().toLowerCase(Locale.ROOT))
                .collect(Collectors.toSet());
        taken.add(Visitor.DESK.text());
        var base = wanted.text()
                .substring(0, Math.min(wanted.text().length(), Name.LONGEST - 6))
                .strip();
        var name = wanted.text();
        for (int i = 2; taken.contains(name.toLowerCase(Locale.ROOT)); i++) {
            name = base + " " + i;
        }
        return new DeviceName(name);
    }

    /** The owner's passphrase from now on. Whoever is signed in stays so. */
    public void setPassphrase(String passphrase) {
        var hash = hashing().hash(passphrase);
        book.keepPassphrase(hash, clock.instant());
    }

    private synchronized Attempts codes() {
        var made = codes;
        if (made == null) {
            made = new Attempts(Limits.CODE, clock);
            codes = made;
        }
        return made;
    }

    private synchronized Attempts passphrases() {
        var made = passphrases;
        if (made == null) {
            made = new Attempts(Limits.PASSPHRASE, clock);
            passphrases = made;
        }
        return made;
    }

    private synchronized Passphrases hashing() {
        var made = hashing;
        if (made == null) {
            made = new Passphrases();
            hashing = made;
        }
        return made;
    }

    /** Puts a device out, at once and for good. Empty where there is none of that id that is in. */
    public synchronized Optional<Device> letGo(String id) {
        var now = clock.instant();
        var found = in(id, now);
        found.map(device -> device.goneAt(now)).ifPresent(this::keep);
        return found;
    }

    /** Whether this is a device on which the owner has signed in, rather than one that joined. */
    public synchronized boolean isSignedIn(String id) {
        return in(id, clock.instant())
                .filter(device -> device.way() == Device.Way.PASSPHRASE)
                .isPresent();
    }

    /** The owner signs out. A device that joined by a code stays in. */
    public synchronized void signOut(String id) {
        var now = clock.instant();
        in(id, now)
                .filter(device -> device.way() == Device.Way.PASSPHRASE)
                .map(device -> device.goneAt(now))
                .ifPresent(this::keep);
    }

    /** From now on this device may do what that role may. Empty where there is none of that id that is in. */
    public synchronized Optional<Device> change(String id, Role role) {
        var found = in(id, clock.instant()).filter(device -> device.way() == Device.Way.CODE);
        found.map(device -> device.as(role)).ifPresent(this::keep);
        return found;
    }

    private Optional<Device> in(String id, Instant now) {
        return byToken().values().stream()
                .filter(d -> d.id().equals(id) && d.isIn(now))
                .findFirst();
    }
}
