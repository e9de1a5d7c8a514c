package eggwright.book.name;

import eggwright.units.OutOfRange;

/**
 * A name as people write it on a pen, a tray or a machine. One to {@value #LONGEST} characters, no line breaks or other
 * control characters, no space at either end; two names are the same when they are the same text.
 */
public sealed interface Name
        permits PenName,
                MachineName,
                SectionName,
                TrayName,
                SetName,
                BasketName,
                BuyerNumber,
                OrderNumber,
                PersonName,
                DeviceName,
                FarmId {
    int LONGEST = 80;

    String text();

    /** Trims and checks. */
    static String check(String what, String text) {
        var trimmed = text.strip();
        if (trimmed.isEmpty()) {
            throw new OutOfRange(
                    NameReason.NAME_EMPTY, "The name of a " + what + " is empty. Write at least one letter or digit.");
        }
        if (trimmed.length() > LONGEST) {
            throw new OutOfRange(
                    NameReason.NAME_TOO_LONG,
                    "The name of a " + what + " has " + trimmed.length() + " characters; the most is " + LONGEST + ".",
                    trimmed.length(),
                    LONGEST);
        }
        // A loop, since a book holds many thousand names; no control character needs two chars.
        for (int i = 0; i < trimmed.length(); i++) {
            if (Character.isISOControl(trimmed.charAt(i))) {
                throw new OutOfRange(
                        NameReason.NAME_ON_TWO_LINES,
                        "The name of a " + what + " holds a line break or another control character.");
            }
        }
        return trimmed;
    }
}
