package eggwright.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What phones send. */
class PhoneMailTest {
    private static final String ENTRY =
            "{\\\"id\\\":\\\"01976b2e-7c00-7000-8000-000000000001\\\",\\\"farm\\\":\\\"f\\\","
                    + "\\\"kind\\\":\\\"looked\\\",\\\"happened\\\":\\\"2027-04-13T19:00-05:00\\\","
                    + "\\\"noted\\\":\\\"2027-04-13T19:00-05:00\\\",\\\"who\\\":\\\"Wren\\\",\\\"device\\\":\\\"phone\\\","
                    + "\\\"origin\\\":\\\"noted\\\",\\\"payload_version\\\":3,\\\"payload\\\":{\\\"scope\\\":{\\\"set\\\":\\\"14\\\"},"
                    + "\\\"findings\\\":[],\\\"removed_unsorted\\\":0}}";

    private static String mail(String entries) {
        return "{\"farm\":\"f\",\"sent_at\":1807920000123,\"entries\":[" + entries + "]}";
    }

    @Test
    void mail_keepsEachEntryAsThePhoneWroteIt_alsoBesideOneThatIsNone() {
        var mail = assertInstanceOf(
                        PhoneMail.Mail.Whole.class, PhoneMail.read(mail("\"" + ENTRY + "\",\"not an entry\"")))
                .mail();
        assertEquals(Instant.ofEpochMilli(1807920000123L), mail.sentAt());
        assertInstanceOf(ReadEntry.Whole.class, mail.entries().getFirst().read());
        assertEquals(ENTRY.replace("\\\"", "\""), mail.entries().getFirst().written());
        assertInstanceOf(ReadEntry.Malformed.class, mail.entries().getLast().read());
    }

    @Test
    void whatIsNoMail_isRefused_withItsField() {
        for (var wrong : new String[] {
            "",
            "[]",
            "{}",
            "{\"farm\":\"f\",\"sent_at\":\"noon\",\"entries\":[]}",
            mail("7"),
            mail("").replace("f\"", "\"")
        }) {
            assertInstanceOf(PhoneMail.Mail.Malformed.class, PhoneMail.read(wrong), wrong);
        }
        var reason = assertInstanceOf(
                        PhoneMail.Mail.Malformed.class,
                        PhoneMail.read("{\"farm\":\"f\",\"sent_at\":\"noon\",\"entries\":[]}"))
                .reason();
        assertTrue(reason.contains("sent_at"), reason);
    }

    @Test
    void holding_saysWhoHasWhat() {
        assertEquals(
                Optional.of(new PhoneHolding("14", "7", "Wren", PhoneHolding.State.DID)),
                PhoneHolding.read("{\"set\":\"14\",\"tray\":\"7\",\"who\":\"Wren\",\"state\":\"did\"}"));
        assertEquals(Optional.empty(), PhoneHolding.read("{\"set\":\"14\"}"));
        assertEquals(Optional.empty(), PhoneHolding.read("nothing"));
    }
}
