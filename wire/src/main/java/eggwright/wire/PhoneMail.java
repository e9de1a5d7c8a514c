package eggwright.wire;

import com.fasterxml.jackson.databind.node.ObjectNode;
import eggwright.book.name.FarmId;
import eggwright.units.OutOfRange;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * What a phone sends when it reaches the desk: its entries, each as the text that it wrote when the tray was finished.
 *
 * @param farm whose book the entries are meant for
 * @param sentAt by the phone's own clock
 * @param entries in the order sent
 */
public record PhoneMail(FarmId farm, Instant sentAt, List<Item> entries) {
    public PhoneMail {
        entries = List.copyOf(entries);
    }

    /**
     * One entry of the mail.
     *
     * @param written as the phone wrote it
     */
    public record Item(String written, ReadEntry read) {}

    /** What came of reading a mail. */
    public sealed interface Mail {
        /** A mail; single entries in it may still be malformed. */
        record Whole(PhoneMail mail) implements Mail {}

        /** No mail. The reason names the field and what would be right. */
        record Malformed(String reason) implements Mail {}
    }

    /** Reads {@code {"farm": …, "sent_at": milliseconds since 1970, "entries": ["…", …]}}. */
    public static Mail read(String text) {
        try {
            if (!(Tree.read(text) instanceof ObjectNode mail)) {
                return new Mail.Malformed("This is not a mail of a phone. It is a JSON object.");
            }
            var farm = mail.path("farm");
            if (!farm.isTextual()) {
                throw new Misread("farm", farm, "text");
            }
            var sentAt = mail.path("sent_at");
            if (!sentAt.isNumber()) {
                throw new Misread("sent_at", sentAt, "milliseconds since 1970");
            }
            var entries = mail.path("entries");
            if (!entries.isArray()) {
                throw new Misread("entries", entries, "a list of texts");
            }
            var items = new ArrayList<Item>();
            for (var entry : entries) {
                if (!entry.isTextual()) {
                    throw new Misread("entries", entry, "a list of texts");
                }
                items.add(new Item(entry.textValue(), EntryCodec.read(entry.textValue())));
            }
            return new Mail.Whole(
                    new PhoneMail(new FarmId(farm.textValue()), Instant.ofEpochMilli(sentAt.longValue()), items));
        } catch (OutOfRange | Misread refused) {
            return new Mail.Malformed(String.valueOf(refused.getMessage()));
        }
    }
}
