package eggwright.intake.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingUnit;
import eggwright.intake.Shelf2;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SensorsTest {
    private final Shelf2 shelf = new Shelf2();

    @Test
    void sensor_isKnownByItsToken_andByNoOther() {
        assertEquals(new Sensors.Known.By(shelf.added.sensor()), shelf.sensors.known(shelf.token()));
        assertEquals(new Sensors.Known.Nobody(), shelf.sensors.known(""));
        assertEquals(new Sensors.Known.Nobody(), shelf.sensors.known(shelf.token() + "A"));
        assertEquals(
                new Sensors.Known.Nobody(),
                shelf.sensors.known(shelf.added.sensor().tokenSha256()),
                "what is kept of a token lets nobody in");
    }

    /** RFC 4648, section 5: 256 bits are 43 letters, none of which an MQTT topic (3.1.1, section 4.7) reads as its own. */
    @Test
    void token_hasOnlyLettersThatHeadersAndTopicsTake() {
        assertTrue(shelf.token().matches("[A-Za-z0-9_-]{43}"), shelf.token());
        assertFalse(shelf.book.all().toString().contains(shelf.token()), "the book never sees it");
    }

    /** FIPS 180-4: the digest of "abc", as printed with the standard. */
    @Test
    void token_isKeptAsItsSha256() {
        assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Token.sha256("abc"));
        assertEquals(Token.sha256(shelf.token()), shelf.added.sensor().tokenSha256());
    }

    @Test
    void revoked_holdsFromTheNextMessageOn_andOverAStart() {
        assertEquals(
                Optional.of(shelf.added.sensor()),
                shelf.sensors.revoke(shelf.added.sensor().id()));
        assertInstanceOf(Sensors.Known.Revoked.class, shelf.sensors.known(shelf.token()));
        assertEquals(Optional.empty(), shelf.sensors.revoke(shelf.added.sensor().id()), "once");
        var nextDay = new Sensors(shelf.book, shelf.clock, new SplittableRandom(8));
        assertInstanceOf(Sensors.Known.Revoked.class, nextDay.known(shelf.token()));
    }

    @Test
    void sameSensorTwice_isRefused_untilTheFirstIsRevoked() {
        assertInstanceOf(Sensors.Added.Taken.class, shelf.sensors.add(Shelf2.CHANNEL));
        assertInstanceOf(
                Sensors.Added.In.class,
                shelf.sensors.add(Shelf2.channel(Quantity.HUMIDITY, ReadingUnit.PERCENT)),
                "one box may tell two quantities");
        shelf.sensors.revoke(shelf.added.sensor().id());
        var again = assertInstanceOf(Sensors.Added.In.class, shelf.sensors.add(Shelf2.CHANNEL));
        assertNotEquals(shelf.token(), again.token());
        assertInstanceOf(
                Sensors.Known.Revoked.class, shelf.sensors.known(shelf.token()), "the old token stays revoked");
    }
}
