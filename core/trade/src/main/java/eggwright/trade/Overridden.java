package eggwright.trade;

import eggwright.trade.source.Source;
import eggwright.trade.source.Sourced;
import java.util.EnumMap;
import java.util.Map;

/** A profile's values with the farm's own laid over them, and what follows from those. */
final class Overridden {
    private Overridden() {}

    static Map<ProfileField, Sourced<FieldValue>> values(SpeciesProfile before, SpeciesOverride override) {
        var values = new EnumMap<>(before.values());
        var farm = new Source.FarmOverride(override.since());
        var follows = new Source.Computed("from what " + farm.words() + ", says");
        var own = override.values();
        own.forEach((field, value) -> values.put(field, new Sourced<>(value, farm)));

        if (own.get(ProfileField.PERIOD_DAYS) instanceof FieldValue.Days period) {
            values.put(ProfileField.FIRST_PIP_DAY, Hatch.firstPip(before.species(), period.days(), farm));
            if (!own.containsKey(ProfileField.PERIOD_RANGE_DAYS)) {
                values.put(ProfileField.PERIOD_RANGE_DAYS, new Sourced<>(Hatch.around(period.days()), follows));
                values.put(ProfileField.HATCH_WINDOW_DAYS, new Sourced<>(Hatch.around(period.days()), follows));
            }
        }
        if (own.get(ProfileField.PERIOD_RANGE_DAYS) instanceof FieldValue.DaysRange range) {
            values.put(ProfileField.HATCH_WINDOW_DAYS, Hatch.window(range.days(), farm));
        }
        if (own.get(ProfileField.TRANSFER_DAY) instanceof FieldValue.Days transfer) {
            double gap = before.transferDay().value() - before.lastTurnDay().value();
            double last = Math.max(0, transfer.days() - gap);
            values.put(ProfileField.LAST_TURN_DAY, new Sourced<>(new FieldValue.Days(last), follows));
        }
        if (own.get(ProfileField.CANDLING_DAYS) instanceof FieldValue.DayList looks) {
            values.put(ProfileField.CUSTOMARY_CANDLING_DAYS, new Sourced<>(looks, farm));
        }
        // What the farm says outright is stronger than what follows from its other words.
        own.forEach((field, value) -> values.put(field, new Sourced<>(value, farm)));
        return values;
    }
}
