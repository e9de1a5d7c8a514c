package eggwright.trade;

import eggwright.trade.source.Sourced;
import eggwright.units.Humidity;
import eggwright.units.Mass;
import eggwright.units.Temperature;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What the trade, or the farm itself, says of one species. Every field has a value and every value its source.
 *
 * <p>Day 0 is the day the eggs go into the heat. Which source is followed where several speak: {@link Choice}.
 *
 * @param species the bird
 * @param values a value for each {@link ProfileField}
 * @param losses first guesses of the losses by stage
 * @param alternatives what each source says, followed or not
 */
public record SpeciesProfile(
        Species species,
        Map<ProfileField, Sourced<FieldValue>> values,
        FirstGuess losses,
        List<SourceRow> alternatives) {
    public SpeciesProfile {
        for (var field : ProfileField.values()) {
            if (!values.containsKey(field)) {
                throw new IllegalStateException("The profile of " + species.word() + " has no " + field.word());
            }
        }
        values = java.util.Collections.unmodifiableMap(new EnumMap<>(values));
        alternatives = List.copyOf(alternatives);
    }

    /** The trade's profile. The tables are read once, when the first profile is asked for. */
    public static SpeciesProfile of(Species species) {
        return Profiles.of(species);
    }

    /** The same species as this farm keeps it. What follows from an overridden value (pip, window, last turn) follows. */
    public SpeciesProfile with(SpeciesOverride override) {
        return new SpeciesProfile(species, Overridden.values(this, override), losses, alternatives);
    }

    public Sourced<FieldValue> value(ProfileField field) {
        var value = values.get(field);
        if (value == null) {
            throw new IllegalStateException(species.word() + " has no " + field.word());
        }
        return value;
    }

    /** What each source that speaks of a field says of it, in the order of the tables. */
    public List<Sourced<FieldValue>> alternatives(ProfileField field) {
        return alternatives.stream()
                .flatMap(row -> row.values().entrySet().stream()
                        .filter(e -> e.getKey() == field)
                        .map(e -> new Sourced<>(e.getValue(), row.source())))
                .toList();
    }

    /** Typical days from set to hatch; may be a half day. */
    public Sourced<Double> periodDays() {
        return days(ProfileField.PERIOD_DAYS);
    }

    public Sourced<Range<Double>> periodRangeDays() {
        return daysRange(ProfileField.PERIOD_RANGE_DAYS);
    }

    public Sourced<Temperature> setterTemperature() {
        return temperature(ProfileField.SETTER_TEMPERATURE);
    }

    public Sourced<Range<Temperature>> setterWetBulb() {
        return temperatures(ProfileField.SETTER_WET_BULB);
    }

    public Sourced<Range<Humidity>> setterHumidity() {
        return humidity(ProfileField.SETTER_HUMIDITY);
    }

    public Sourced<Temperature> hatcherTemperature() {
        return temperature(ProfileField.HATCHER_TEMPERATURE);
    }

    public Sourced<Range<Temperature>> hatcherWetBulb() {
        return temperatures(ProfileField.HATCHER_WET_BULB);
    }

    public Sourced<Range<Humidity>> hatcherHumidity() {
        return humidity(ProfileField.HATCHER_HUMIDITY);
    }

    /** The looks that the day sheet asks for: one, on day 7 or 8, unless the farm says otherwise. */
    public Sourced<List<Integer>> candlingDays() {
        return dayList(ProfileField.CANDLING_DAYS);
    }

    /** The looks of the fuller custom, the last often at transfer. */
    public Sourced<List<Integer>> customaryCandlingDays() {
        return dayList(ProfileField.CUSTOMARY_CANDLING_DAYS);
    }

    public Sourced<Double> lastTurnDay() {
        return days(ProfileField.LAST_TURN_DAY);
    }

    public Sourced<Double> transferDay() {
        return days(ProfileField.TRANSFER_DAY);
    }

    public Sourced<Double> firstPipDay() {
        return days(ProfileField.FIRST_PIP_DAY);
    }

    public Sourced<Range<Double>> hatchWindowDays() {
        return daysRange(ProfileField.HATCH_WINDOW_DAYS);
    }

    public Sourced<Double> storageAdvisedDays() {
        return days(ProfileField.STORAGE_ADVISED_DAYS);
    }

    public Sourced<Double> storageLimitDays() {
        return days(ProfileField.STORAGE_LIMIT_DAYS);
    }

    public Sourced<Range<Temperature>> storeTemperature() {
        return temperatures(ProfileField.STORE_TEMPERATURE);
    }

    public Sourced<Range<Humidity>> storeHumidity() {
        return humidity(ProfileField.STORE_HUMIDITY);
    }

    public Sourced<Mass> eggMass() {
        return value(ProfileField.EGG_MASS).map(v -> ((FieldValue.Weight) v).mass());
    }

    /** From the lightest to the heaviest egg that any source gives. */
    public Sourced<Range<Mass>> eggMassRange() {
        return value(ProfileField.EGG_MASS_RANGE).map(v -> ((FieldValue.WeightRange) v).masses());
    }

    /** The days that a class of the break-out means in this species. An infertile egg never began: day 0. */
    public Sourced<DayRange> days(BreakOutClass seen) {
        return DeathDays.of(this, seen);
    }

    private Sourced<Double> days(ProfileField field) {
        return value(field).map(v -> ((FieldValue.Days) v).days());
    }

    private Sourced<Range<Double>> daysRange(ProfileField field) {
        return value(field).map(v -> ((FieldValue.DaysRange) v).days());
    }

    private Sourced<List<Integer>> dayList(ProfileField field) {
        return value(field).map(v -> ((FieldValue.DayList) v).days());
    }

    private Sourced<Temperature> temperature(ProfileField field) {
        return value(field).map(v -> ((FieldValue.Degrees) v).temperature());
    }

    private Sourced<Range<Temperature>> temperatures(ProfileField field) {
        return value(field).map(v -> ((FieldValue.DegreesRange) v).temperatures());
    }

    private Sourced<Range<Humidity>> humidity(ProfileField field) {
        return value(field).map(v -> ((FieldValue.HumidityRange) v).humidity());
    }
}
