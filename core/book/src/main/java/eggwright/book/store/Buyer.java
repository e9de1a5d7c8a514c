package eggwright.book.store;

import eggwright.book.name.BuyerNumber;
import eggwright.units.OutOfRange;

/**
 * Who is behind a buyer number. Never part of an entry.
 *
 * @param name at least one character, at most {@value #LONGEST}
 * @param address may be empty; at most {@value #LONGEST} characters
 * @param note such as a telephone number; may be empty; at most {@value #LONGEST} characters
 */
public record Buyer(BuyerNumber number, String name, String address, String note) {
    public static final int LONGEST = 1000;

    /**
     * Trims and checks.
     *
     * @throws OutOfRange if there is no name, or a text is too long
     */
    public Buyer {
        name = checked("name", name);
        address = checked("address", address);
        note = checked("note", note);
        if (name.isEmpty()) {
            throw new OutOfRange(
                    BuyerReason.BUYER_WITHOUT_NAME,
                    "The name of the buyer is empty. Write at least one letter or digit.");
        }
    }

    private static String checked(String what, String text) {
        var trimmed = text.strip();
        if (trimmed.length() > LONGEST) {
            throw new OutOfRange(
                    BuyerReason.BUYER_TEXT_TOO_LONG,
                    "The " + what + " of the buyer has " + trimmed.length() + " characters; the most is " + LONGEST
                            + ".",
                    trimmed.length(),
                    LONGEST);
        }
        return trimmed;
    }
}
