package eggwright.desk.lamp;

import eggwright.book.entry.Entry;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Withdrawn;
import eggwright.book.name.DeviceName;
import eggwright.book.store.Offered;
import eggwright.book.store.Refusal;
import eggwright.desk.lamp.MailAnswer.OfEntry;
import eggwright.desk.live.LiveBook;
import eggwright.desk.note.Rights;
import eggwright.desk.who.Visitor;
import eggwright.desk.words.Words;
import eggwright.wire.PhoneMail;
import eggwright.wire.ReadEntry;
import java.time.Duration;

/**
 * Takes what phones send. Each entry stands for itself: one that is refused does not keep back the others, for they may
 * come in any order, any number of times.
 */
final class MailRoom {
    /** A phone's clock that differs by less is right: the way here and a second hand take as long. */
    private static final Duration SAME_CLOCK = Duration.ofSeconds(2);

    private final LiveBook book;
    private final Words words;

    MailRoom(LiveBook book, Words words) {
        this.book = book;
        this.words = words;
    }

    /** Takes a mail in, entry by entry. */
    MailAnswer take(PhoneMail mail, Visitor visitor) {
        var here = book.time().toInstant();
        var behind = Duration.between(mail.sentAt(), here);
        var offset = behind.abs().compareTo(SAME_CLOCK) < 0 ? Duration.ZERO : behind;
        return new MailAnswer(
                book.farm().text(),
                here,
                mail.entries().stream().map(i -> take(i, visitor, offset)).toList());
    }

    private OfEntry take(PhoneMail.Item item, Visitor visitor, Duration offset) {
        return switch (item.read()) {
            case ReadEntry.Malformed(var reason) -> OfEntry.refused(reason);
            case ReadEntry.Whole(var entry) -> {
                if (!mayCome(entry)) {
                    yield OfEntry.refused(
                            words.say("refused.kind", entry.payload().kindWord()));
                }
                if (isAnothers(entry, visitor.device())) {
                    yield OfEntry.refused(
                            words.say("refused.device", entry.device().text()));
                }
                yield mayWithdraw(entry, visitor)
                        ? append(entry, item, offset)
                        : OfEntry.refused(words.say("refused.notYours"));
            }
        };
    }

    /** At the lamp trays are counted, and counts are taken back; everything else has a page of its own. */
    private static boolean mayCome(Entry entry) {
        return entry.payload() instanceof Looked || entry.payload() instanceof Withdrawn;
    }

    /** A phone that joined anew under another name still has entries under its old one; the desk's own name is not for phones. */
    private static boolean isAnothers(Entry entry, DeviceName device) {
        return entry.device().equals(Visitor.DESK) && !device.equals(Visitor.DESK);
    }

    /** What another device noted, only the owner takes back. A target that has not come yet is of this phone. */
    private boolean mayWithdraw(Entry entry, Visitor visitor) {
        return !(entry.payload() instanceof Withdrawn withdrawn)
                || book.ask(ledger -> ledger.effective(withdrawn.target()))
                        .map(target -> Rights.mayChange(visitor, target.entry()))
                        .orElse(true);
    }

    private OfEntry append(Entry entry, PhoneMail.Item item, Duration offset) {
        return switch (book.append(new Offered(entry, item.written(), offset))) {
            case LiveBook.Noted.Kept kept -> OfEntry.KEPT;
            case LiveBook.Noted.KeptBefore kept -> OfEntry.KEPT_BEFORE;
            case LiveBook.Noted.NotKept(var why) -> notKept(why);
        };
    }

    private OfEntry notKept(Refusal why) {
        return switch (why) {
            case Refusal.OtherContent it -> OfEntry.refused(words.say("refused.otherContent"));
            case Refusal.OtherFarm it ->
                OfEntry.refused(words.say(
                        "refused.otherFarm", it.offered().text(), it.ours().text()));
            case Refusal.NotSaved it -> OfEntry.notNow(words.say("refused.notSaved", it.reason()));
        };
    }
}
