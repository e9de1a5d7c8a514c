package eggwright.book.entry;

import eggwright.book.name.EntryId;

/**
 * Takes back an earlier entry: it should not have been noted.
 *
 * @param target the entry as first noted
 * @param saw the version that was on the page when it was withdrawn
 */
public record Withdrawn(EntryId target, EntryId saw, String why) implements Payload {
    public Withdrawn {
        why = Checks.text("Why", why);
    }
}
