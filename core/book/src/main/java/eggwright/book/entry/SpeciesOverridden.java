package eggwright.book.entry;

import eggwright.trade.Species;

/**
 * This farm's own value for one figure of a species.
 *
 * @param field the word of a profile field, such as transfer_day
 * @param value as typed; empty text goes back to the custom
 */
public record SpeciesOverridden(Species species, String field, String value) implements Payload {
    public SpeciesOverridden {
        field = Checks.text("Field", field);
        value = Checks.text("Value", value);
    }
}
