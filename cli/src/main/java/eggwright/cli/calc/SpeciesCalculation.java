package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.trade.FieldValue;
import eggwright.trade.FirstGuess;
import eggwright.trade.ProfileField;
import eggwright.trade.SpeciesProfile;
import eggwright.trade.source.Source;
import eggwright.trade.source.Sourced;
import eggwright.units.Temperature;
import java.util.List;

/** What the trade says of one species, each value with its source. */
final class SpeciesCalculation implements Calculation {
    @Override
    public String name() {
        return "species";
    }

    @Override
    public String about() {
        return "What the trade says of a species, each value with its source. Day 0 is the day the eggs go into the heat.";
    }

    @Override
    public String example() {
        return "eggwright calc species pheasant";
    }

    @Override
    public List<Input> inputs() {
        return List.of(new Input(SpeciesInput.NAME, "NAME", SpeciesInput.ALL, Input.Need.NEEDED_AS_A_WORD));
    }

    @Override
    public Answer answer(Given given) {
        var species = SpeciesInput.of(given);
        var profile = SpeciesProfile.of(species);
        var answer = Answer.of().with("species", species.word()).with("scientific_name", species.scientificName());
        for (var field : ProfileField.values()) {
            var sourced = profile.value(field);
            answer = answer.with(
                    field.word(),
                    values(sourced.value()).with("source", sourced.source().words()));
        }
        return answer.with("first_guess_losses", losses(profile.losses())).with("sources", sources(profile));
    }

    private static Answer values(FieldValue value) {
        var answer = Answer.of();
        return switch (value) {
            case FieldValue.Days days -> answer.with("days", days.days());
            case FieldValue.DaysRange range ->
                answer.with("low_days", range.days().low())
                        .with("high_days", range.days().high());
            case FieldValue.DayList list -> answer.with("days", Value.wholes(list.days()));
            case FieldValue.Degrees degrees -> temperature(answer, "", degrees.temperature());
            case FieldValue.DegreesRange range ->
                temperature(
                        temperature(answer, "low_", range.temperatures().low()),
                        "high_",
                        range.temperatures().high());
            case FieldValue.HumidityRange range ->
                answer.with("low_pct", range.humidity().low().pct())
                        .with("high_pct", range.humidity().high().pct());
            case FieldValue.Weight weight -> answer.with("mass_g", weight.mass().grams());
            case FieldValue.WeightRange range ->
                answer.with("low_g", range.masses().low().grams())
                        .with("high_g", range.masses().high().grams());
        };
    }

    private static Answer temperature(Answer answer, String end, Temperature temperature) {
        return answer.with(end + "temperature_f", temperature.fahrenheit())
                .with(end + "temperature_c", temperature.celsius());
    }

    private static Answer losses(FirstGuess guess) {
        return Answer.of()
                .with("infertile_of_set", share(guess.infertileOfSet()))
                .with("early_dead_of_fertile", share(guess.earlyDeadOfFertile()))
                .with("mid_dead_of_fertile", share(guess.midDeadOfFertile()))
                .with("late_dead_of_fertile", share(guess.lateDeadOfFertile()))
                .with("pipped_dead_of_fertile", share(guess.pippedDeadOfFertile()))
                .with("contaminated_of_set", share(guess.contaminatedOfSet()))
                .with("cracked_of_set", share(guess.crackedOfSet()))
                .with("culled_of_hatched", share(guess.culledOfHatched()))
                .with("dead_in_basket_of_hatched", share(guess.deadInBasketOfHatched()));
    }

    private static Answer share(Sourced<Double> share) {
        return Answer.of()
                .with("share", share.value())
                .with("source", share.source().words());
    }

    /** The publications that any source of this species names, once each. */
    private static Value sources(SpeciesProfile profile) {
        return new Value.Many(java.util.Arrays.stream(ProfileField.values())
                .map(field -> profile.value(field).source())
                .filter(Source.Published.class::isInstance)
                .map(Source.Published.class::cast)
                .distinct()
                .<Value>map(source -> new Value.Group(Answer.of()
                        .with("key", source.key())
                        .with("reference", source.reference())
                        .with("address", source.address())))
                .toList());
    }
}
