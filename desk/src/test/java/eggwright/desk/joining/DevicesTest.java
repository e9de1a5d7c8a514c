package eggwright.desk.joining;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.name.DeviceName;
import eggwright.desk.joining.Devices.Entrance;
import eggwright.desk.joining.Devices.Invitation;
import eggwright.desk.who.Role;
import eggwright.desk.who.Visitor;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashSet;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

final class DevicesTest {
    private static final DeviceName PHONE = new DeviceName("Wren’s phone");
    private static final String PASSPHRASE = "barn lantern oat eleven";

    private Instant now = Instant.parse("2027-05-12T17:00:00Z");
    private final InstantSource clock = () -> now;
    private final DevicesInMemory book = new DevicesInMemory();
    private Devices devices = new Devices(book, clock, new SplittableRandom(1));

    private String code(Role role) {
        return assertInstanceOf(Invitation.Code.class, devices.invite(role)).code();
    }

    private Entrance.In in(Entrance entrance) {
        return assertInstanceOf(Entrance.In.class, entrance);
    }

    private Entrance.In join(Role role, DeviceName name) {
        return in(devices.join(code(role), name, "192.0.2." + (book.all().size() + 1)));
    }

    @Test
    void device_joinsByItsCode_andIsKnownByItsToken() {
        var typed = Secrets.spaced(code(Role.HAND)).toLowerCase(java.util.Locale.ROOT);
        var joined = in(devices.join(" " + typed + " ", PHONE, "192.0.2.7"));

        assertEquals(
                new Visitor.Joined(joined.device().id(), PHONE, Role.HAND),
                devices.known(joined.token()).visitor());
        assertEquals(new Visitor.Nobody(), devices.known(joined.token() + "x").visitor());
        assertEquals(new Visitor.Nobody(), devices.known("").visitor());
    }

    @Test
    void code_isGoodOnce() {
        var code = code(Role.HAND);
        in(devices.join(code, PHONE, "192.0.2.7"));

        assertEquals(new Entrance.NotRight(), devices.join(code, PHONE, "192.0.2.8"));
    }

    @Test
    void code_isGoodForTenMinutes() {
        var first = code(Role.HAND);
        var second = code(Role.HAND);
        now = now.plus(Duration.ofMinutes(10)).minusMillis(1);
        in(devices.join(first, PHONE, "192.0.2.7"));
        now = now.plusMillis(1);
        assertEquals(new Entrance.NotRight(), devices.join(second, PHONE, "192.0.2.8"));
    }

    @Test
    void code_ofADeviceThatWasLetGo_opensNothing() {
        var code = code(Role.HAND);
        var joined = in(devices.join(code, PHONE, "192.0.2.7"));
        devices.letGo(joined.device().id());

        assertEquals(new Visitor.Nobody(), devices.known(joined.token()).visitor());
        assertEquals(new Entrance.NotRight(), devices.join(code, PHONE, "192.0.2.8"));
    }

    /** The arithmetic that the guide states, from the numbers in force. */
    @Test
    void code_isNotGuessedInItsLifetime() {
        assertEquals(31, new HashSet<>(Secrets.CODE_SIGNS.chars().boxed().toList()).size());
        assertEquals(Devices.CODE_LIVES, Limits.CODE.span());
        var codes = BigInteger.valueOf(31).pow(Secrets.CODE_LENGTH);
        assertEquals(new BigInteger("852891037441"), codes);

        var hits = BigDecimal.valueOf((long) Limits.CODE.mostInOneSpan() * Devices.MOST_CODES);
        var chance = hits.divide(new BigDecimal(codes), MathContext.DECIMAL64);
        assertEquals(new BigDecimal("400"), hits);
        assertTrue(chance.compareTo(new BigDecimal("0.0000000005")) < 0, chance.toString());
    }

    /** An attacker with any number of addresses, as patient as can be: what the limit lets through in ten minutes. */
    @Test
    void codes_areTriedAtMostFortyTimes_inTheLifeOfOne() {
        var ends = now.plus(Devices.CODE_LIVES);
        int tried = 0;
        for (int address = 0; now.isBefore(ends); address++) {
            if (!(devices.join("AAAA2222", PHONE, "10.0." + address / 250 + "." + address % 250)
                    instanceof Entrance.TooOften)) {
                tried++;
            }
            now = now.plusMillis(500);
        }
        assertEquals(39, tried);
        assertTrue(tried <= Limits.CODE.mostInOneSpan());
    }

    @Test
    void oneAddress_triesFiveCodes_andOthersAreNotKeptOut() {
        var code = code(Role.HAND);
        for (int i = 0; i < 5; i++) {
            assertEquals(new Entrance.NotRight(), devices.join("AAAA2222", PHONE, "192.0.2.66"));
        }
        for (int i = 0; i < 100; i++) {
            assertEquals(new Entrance.TooOften(), devices.join(code, PHONE, "192.0.2.66"), "even the right one");
        }
        in(devices.join(code, PHONE, "192.0.2.7"));

        now = now.plus(Duration.ofMinutes(2));
        assertEquals(new Entrance.NotRight(), devices.join("AAAA2222", PHONE, "192.0.2.66"));
        assertEquals(new Entrance.TooOften(), devices.join("AAAA2222", PHONE, "192.0.2.66"));
    }

    @Test
    void addressesOfVersion6_countWithTheirNetwork() {
        for (int i = 0; i < 5; i++) {
            assertEquals(new Entrance.NotRight(), devices.join("AAAA2222", PHONE, "fd00:0:0:1::" + i));
        }
        assertEquals(new Entrance.TooOften(), devices.join("AAAA2222", PHONE, "fd00:0:0:1:ffff::1"));
        assertEquals(new Entrance.NotRight(), devices.join("AAAA2222", PHONE, "fd00:0:0:2::1"));
    }

    @Test
    void noFurtherCode_isGivenOut_whenTenStand() {
        for (int i = 0; i < 10; i++) {
            code(Role.LOOKER);
        }
        assertEquals(new Invitation.TooMany(), devices.invite(Role.LOOKER));
        now = now.plus(Devices.CODE_LIVES);
        code(Role.LOOKER);
    }

    @Test
    void tokensAndCodes_areKeptAsHashesOnly() {
        var code = code(Role.HAND);
        assertEquals(1, book.codesAt(now));
        var joined = in(devices.join(code, PHONE, "192.0.2.7"));
        assertEquals(Secrets.sha256(joined.token()), book.all().getFirst().tokenSha256());
        assertEquals(43, joined.token().length(), "256 bits in Base64");
        assertFalse(book.all().toString().contains(joined.token()));
        assertNotEquals(joined.token(), join(Role.HAND, new DeviceName("Other")).token());
    }

    /** FIPS 180-4, as NIST's examples have it: SHA-256 of “abc”. */
    @Test
    void hash_isSha256() {
        assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Secrets.sha256("abc"));
    }

    @Test
    void deviceThatIsLetGo_isOutAtOnce_andStaysListed() {
        var one = join(Role.HAND, PHONE);
        var other = join(Role.HAND, new DeviceName("Barn tablet"));
        assertEquals(PHONE, devices.letGo(one.device().id()).orElseThrow().name());

        assertEquals(new Visitor.Nobody(), devices.known(one.token()).visitor());
        assertInstanceOf(Visitor.Joined.class, devices.known(other.token()).visitor());
        assertEquals(2, devices.all().size());
        assertTrue(devices.letGo(one.device().id()).isEmpty());
    }

    @Test
    void deviceThatIsLetGo_staysOut_whenTheDeskIsOpenedAgain() {
        var one = join(Role.HAND, PHONE);
        var other = join(Role.LOOKER, new DeviceName("Hall screen"));
        devices.letGo(one.device().id());
        devices = new Devices(book, clock, new SplittableRandom(2));

        assertEquals(new Visitor.Nobody(), devices.known(one.token()).visitor());
        assertInstanceOf(Visitor.Joined.class, devices.known(other.token()).visitor());
    }

    @Test
    void names_areNeverGivenTwice() {
        var one = join(Role.HAND, PHONE);
        devices.letGo(one.device().id());

        assertEquals("Wren’s phone 2", join(Role.HAND, PHONE).device().name().text());
        assertEquals(
                "wren’s phone 3",
                join(Role.HAND, new DeviceName("wren’s phone")).device().name().text());
        assertEquals(
                "Desk 2",
                join(Role.HAND, new DeviceName("Desk")).device().name().text());
    }

    @Test
    void role_isChanged_fromTheNextRequestOn() {
        var phone = join(Role.LOOKER, PHONE);
        devices.change(phone.device().id(), Role.HAND);

        assertEquals(Role.HAND, devices.known(phone.token()).visitor().role().orElseThrow());
    }

    @Test
    void device_staysInFromSeasonToSeason_whileItIsSeen() {
        var phone = join(Role.HAND, PHONE);
        now = now.plus(Duration.ofDays(300));
        assertEquals(Devices.Cookie.TO_BE_RENEWED, devices.known(phone.token()).cookie());
        assertEquals(now, devices.all().getFirst().seen());
        assertEquals(Devices.Cookie.AS_IT_IS, devices.known(phone.token()).cookie());
        now = now.plus(Duration.ofDays(399));
        assertInstanceOf(Visitor.Joined.class, devices.known(phone.token()).visitor());
        now = now.plus(Duration.ofDays(400));
        assertEquals(new Visitor.Nobody(), devices.known(phone.token()).visitor());
    }

    @Test
    void device_goesOn_whenTheDiskIsFull_butNoneCanJoin() {
        var full = new DevicesInMemory() {
            private boolean isFull;

            @Override
            public synchronized void keep(Device device) {
                if (isFull) {
                    throw new IllegalStateException("no space left");
                }
                super.keep(device);
            }
        };
        devices = new Devices(full, clock, new SplittableRandom(3));
        var phone = in(devices.join(code(Role.HAND), PHONE, "192.0.2.7"));
        full.isFull = true;
        now = now.plus(Duration.ofHours(1));

        assertInstanceOf(Visitor.Joined.class, devices.known(phone.token()).visitor());
        var code = code(Role.HAND);
        assertThrows(IllegalStateException.class, () -> devices.join(code, PHONE, "192.0.2.8"));
    }

    @Test
    void owner_signsIn_forTwelveHours_andOut() {
        devices.setPassphrase(PASSPHRASE);
        var phone = join(Role.HAND, PHONE);
        var on = devices.known(phone.token()).visitor();
        var owner = in(devices.signIn(PASSPHRASE, on, PHONE, "192.0.2.7"));
        assertEquals(PHONE, owner.device().name());
        assertEquals(Role.OWNER, devices.known(owner.token()).visitor().role().orElseThrow());

        now = now.plus(Devices.SIGNED_IN);
        assertEquals(new Visitor.Nobody(), devices.known(owner.token()).visitor());
        assertEquals(on, devices.known(phone.token()).visitor());

        var again = in(devices.signIn(PASSPHRASE, on, PHONE, "192.0.2.7"));
        devices.signOut(again.device().id());
        assertEquals(new Visitor.Nobody(), devices.known(again.token()).visitor());
    }

    @Test
    void passphrase_isTriedFiveTimesAnHour_evenIfTheSixthWereRight() {
        assertEquals(new Entrance.NotRight(), devices.signIn("", new Visitor.Nobody(), PHONE, "192.0.2.7"));
        devices.setPassphrase(PASSPHRASE);
        for (int i = 0; i < 4; i++) {
            assertEquals(
                    new Entrance.NotRight(),
                    devices.signIn("barn lantern oat twelve", new Visitor.Nobody(), PHONE, "192.0.2.7"));
        }
        assertEquals(new Entrance.TooOften(), devices.signIn(PASSPHRASE, new Visitor.Nobody(), PHONE, "192.0.2.7"));
        now = now.plus(Duration.ofMinutes(12));
        in(devices.signIn(PASSPHRASE, new Visitor.Nobody(), PHONE, "192.0.2.7"));
    }

    @Test
    void passphrase_isKeptAsASaltedArgon2id_withTheCostOfRfc9106() {
        devices.setPassphrase(PASSPHRASE);
        var one = book.passphrase().orElseThrow();
        devices.setPassphrase(PASSPHRASE);

        assertTrue(one.startsWith("$argon2id$v=19$m=65536,t=3,p=4$"), one);
        assertNotEquals(one, book.passphrase().orElseThrow());
    }

    /**
     * A hash made by the reference implementation: its test.c, {@code hashtest(version, 2, 16, 1, "password", "somesalt",
     * …, Argon2_id)} (github.com/P-H-C/phc-winner-argon2).
     */
    @Test
    void passphrase_isReadAsTheReferenceImplementationWroteIt() {
        var made = "$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc";

        assertTrue(new Passphrases().fits("password", made));
        assertFalse(new Passphrases().fits("Password", made));
    }
}
