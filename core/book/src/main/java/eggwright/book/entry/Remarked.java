package eggwright.book.entry;

import org.jspecify.annotations.Nullable;

/**
 * A remark in a person's own words.
 *
 * @param about absent where it is about the farm
 */
public record Remarked(@Nullable Scope about, String text) implements Payload {
    public Remarked {
        text = Checks.text("Remark", text);
    }
}
