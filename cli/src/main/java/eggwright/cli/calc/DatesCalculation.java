package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.trade.SpeciesDates;
import eggwright.trade.SpeciesProfile;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;

/** When the work on a set falls due. */
final class DatesCalculation implements Calculation {
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2099;

    @Override
    public String name() {
        return "dates";
    }

    @Override
    public String about() {
        return "When each piece of work on a set falls due. The hour of the set is kept.";
    }

    @Override
    public String example() {
        return "eggwright calc dates --species pheasant --set 2027-04-05T08:00-05:00";
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                Input.needed(SpeciesInput.NAME, "WORD", SpeciesInput.ALL),
                Input.needed("set", "INSTANT", "when the eggs went into the heat, with its offset"),
                Input.optional(
                        "zone", "ZONE", "the farm's time zone, as America/Chicago; where not said the offset is kept"));
    }

    @Override
    public Answer answer(Given given) {
        var species = SpeciesInput.of(given);
        var dates = SpeciesDates.of(SpeciesProfile.of(species), set(given));
        return Answer.of()
                .with("species", species.word())
                .with("set", iso(dates.set()))
                .with("candlings", iso(dates.looks()))
                .with("customary_candlings", iso(dates.customaryLooks()))
                .with("last_turn", iso(dates.lastTurn()))
                .with("transfer", iso(dates.transfer()))
                .with("first_pip", iso(dates.firstPip()))
                .with(
                        "hatch_window",
                        Answer.of().with("from", iso(dates.hatchFrom())).with("to", iso(dates.hatchTo())))
                .with("take_off", iso(dates.takeOff()));
    }

    private static ZonedDateTime set(Given given) {
        var typed = given.needed("set");
        OffsetDateTime instant;
        try {
            instant = OffsetDateTime.parse(typed);
        } catch (DateTimeException unread) {
            throw given.wrong(
                    "set", typed, "a date that exists, with an hour and its offset", "2027-04-05T08:00-05:00");
        }
        if (instant.getYear() < FIRST_YEAR || instant.getYear() > LAST_YEAR) {
            throw given.wrong(
                    "set", "the year " + instant.getYear() + " is outside " + FIRST_YEAR + " to " + LAST_YEAR + ".");
        }
        var zone = given.text("zone");
        if (zone.isEmpty()) {
            return instant.toZonedDateTime();
        }
        try {
            return instant.atZoneSameInstant(ZoneId.of(zone.get()));
        } catch (DateTimeException unknown) {
            throw given.wrong("zone", zone.get(), "a time zone", "America/Chicago");
        }
    }

    private static String iso(ZonedDateTime instant) {
        return instant.format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }

    private static Value iso(List<ZonedDateTime> instants) {
        return Value.texts(instants.stream().map(DatesCalculation::iso).toList());
    }
}
