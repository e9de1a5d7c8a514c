package eggwright.desk.lamp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.name.DeviceName;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.desk.lamp.MailAnswer.Became;
import eggwright.desk.live.LiveBook;
import eggwright.desk.who.Role;
import eggwright.desk.who.Visitor;
import eggwright.desk.words.Words;
import eggwright.testkit.contracts.MemoryEntryStore;
import eggwright.wire.EntryCodec;
import eggwright.wire.PhoneMail;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the desk does with a phone's mail. */
class MailRoomTest {
    private static final Instant NOW = Instant.parse("2027-04-13T20:00:00Z");
    private static final Visitor WREN = new Visitor.Joined("1", new DeviceName("Wren’s phone"), Role.HAND);
    private static final Visitor LINNET = new Visitor.Joined("2", new DeviceName("Linnet’s phone"), Role.HAND);

    private final MemoryEntryStore store = new MemoryEntryStore(new FarmId("Fallow End"));
    private final MailRoom room = new MailRoom(
            new LiveBook(
                    store, EntryCodec::write, EntryCodec::version, InstantSource.fixed(NOW), new SplittableRandom(1)),
            Words.beside(LampPages.class, Locale.ENGLISH));

    private static String entry(int id, String device, String kind, int version, String payload) {
        return "{\"id\":\"" + EntryId.of(NOW.toEpochMilli(), 0, id) + "\",\"farm\":\"Fallow End\",\"kind\":\"" + kind
                + "\",\"happened\":\"2027-04-13T15:00-05:00\",\"noted\":\"2027-04-13T15:00-05:00\",\"who\":\"Wren\","
                + "\"device\":\"" + device + "\",\"origin\":\"noted\",\"payload_version\":" + version + ",\"payload\":"
                + payload + "}";
    }

    private static String look(int id, String device) {
        return entry(
                id,
                device,
                "looked",
                3,
                "{\"scope\":{\"set\":\"14\",\"tray\":\"7\"},\"findings\":[],\"removed_unsorted\":0}");
    }

    private List<Became> send(Visitor visitor, Instant sentAt, String... entries) {
        var mail = new PhoneMail(
                store.farm(),
                sentAt,
                Stream.of(entries)
                        .map(text -> new PhoneMail.Item(text, EntryCodec.read(text)))
                        .toList());
        return room.take(mail, visitor).answers().stream()
                .map(MailAnswer.OfEntry::became)
                .toList();
    }

    @Test
    void entry_isKeptOnce_howeverOftenItComes_andAMalformedOneKeepsNothingBack() {
        var look = look(1, "Wren’s phone");
        assertEquals(List.of(Became.KEPT, Became.REFUSED, Became.KEPT_BEFORE), send(WREN, NOW, look, "nonsense", look));
        assertEquals(1, store.count());
    }

    @Test
    void clock_thatIsWrong_keepsItsOwnTimes_withTheDifferenceBeside() {
        send(WREN, NOW.minus(Duration.ofMinutes(40)), look(1, "Wren’s phone"));
        send(WREN, NOW.minusMillis(900), look(2, "Wren’s phone"));

        assertEquals(Duration.ofMinutes(40), store.all().get(0).clockOffset());
        assertEquals(
                Instant.parse("2027-04-13T20:00:00Z"),
                store.all().get(0).entry().happened().toInstant());
        assertEquals(Duration.ZERO, store.all().get(1).clockOffset());
    }

    @Test
    void phone_bringsLooksAndWhatItTakesBack_andNothingElse() {
        var remark = entry(3, "Wren’s phone", "remark", 1, "{\"text\":\"wire needed\"}");
        assertEquals(List.of(Became.REFUSED), send(WREN, NOW, remark));
        assertEquals(List.of(Became.REFUSED), send(WREN, NOW, look(4, "desk")));
    }

    @Test
    void phone_takesBackItsOwnLooks_notThoseOfOthers() {
        send(LINNET, NOW, look(1, "Linnet’s phone"));
        send(WREN, NOW, look(2, "Wren’s phone"));
        var target = EntryId.of(NOW.toEpochMilli(), 0, 1);
        var own = EntryId.of(NOW.toEpochMilli(), 0, 2);
        var payload = "{\"target\":\"%s\",\"saw\":\"%s\",\"why\":\"undone at the lamp\"}";

        assertEquals(
                List.of(Became.REFUSED, Became.KEPT),
                send(
                        WREN,
                        NOW,
                        entry(5, "Wren’s phone", "withdrawn", 1, payload.formatted(target, target)),
                        entry(6, "Wren’s phone", "withdrawn", 1, payload.formatted(own, own))));
        assertTrue(store.count() == 3);
    }
}
