package eggwright.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.trade.source.Source;
import eggwright.trade.source.Sourced;
import eggwright.units.OutOfRange;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class SpeciesProfileTest {
    private static final LocalDate SINCE = LocalDate.of(2027, 2, 1);

    @ParameterizedTest
    @EnumSource(Species.class)
    void profile_hasEveryField_withItsSource(Species species) {
        var profile = SpeciesProfile.of(species);
        for (var field : ProfileField.values()) {
            assertFalse(profile.value(field).source().words().isBlank(), field.word());
            assertFalse(profile.value(field).value().text().isBlank(), field.word());
        }
        for (var share : shares(profile.losses())) {
            assertTrue(share.value() > 0 && share.value() < 0.5, share.toString());
            assertFalse(share.source().words().isBlank());
        }
    }

    @ParameterizedTest
    @EnumSource(Species.class)
    void profile_agreesWithItself(Species species) {
        var profile = SpeciesProfile.of(species);
        double period = profile.periodDays().value();
        var range = profile.periodRangeDays().value();
        assertTrue(period >= range.low() && period <= range.high());
        assertTrue(profile.storageAdvisedDays().value()
                <= profile.storageLimitDays().value());
        double grams = profile.eggMass().value().grams();
        assertTrue(grams >= profile.eggMassRange().value().low().grams());
        assertTrue(grams <= profile.eggMassRange().value().high().grams());
        int firstLook = profile.candlingDays().value().getFirst();
        assertTrue(firstLook == 7 || firstLook == 8);
    }

    @ParameterizedTest
    @EnumSource(Species.class)
    void classesOfDeath_followEachOtherWithoutAGap(Species species) {
        var profile = SpeciesProfile.of(species);
        var early = profile.days(BreakOutClass.EARLY_DEAD).value();
        var mid = profile.days(BreakOutClass.MID_DEAD).value();
        var late = profile.days(BreakOutClass.LATE_DEAD).value();
        assertEquals(1, early.fromDay());
        assertEquals(early.toDay() + 1, mid.fromDay());
        assertEquals(mid.toDay() + 1, late.fromDay());
        assertTrue(late.toDay() >= profile.periodDays().value());
        for (var seen : BreakOutClass.values()) {
            assertFalse(profile.days(seen).source().words().isBlank());
        }
    }

    /** Pheasant: Deeming and Wadland 2001, British Poultry Science 42:569. Chicken: EDIS VM101, Table 1. */
    @Test
    void classesOfDeath_areThePrintedOnes_forPheasantAndChicken() {
        var pheasant = SpeciesProfile.of(Species.PHEASANT);
        assertEquals(new DayRange(1, 4), pheasant.days(BreakOutClass.EARLY_DEAD).value());
        assertEquals(new DayRange(5, 20), pheasant.days(BreakOutClass.MID_DEAD).value());
        assertEquals(
                new DayRange(21, 25), pheasant.days(BreakOutClass.LATE_DEAD).value());
        var chicken = SpeciesProfile.of(Species.CHICKEN);
        assertEquals(new DayRange(5, 17), chicken.days(BreakOutClass.MID_DEAD).value());
        assertEquals(new DayRange(18, 21), chicken.days(BreakOutClass.LATE_DEAD).value());
    }

    /** TAMU-B6092, seen in a copy, attribution recalled; for the two red-legged rows RLP-TEMP and RLP-TURN, seen. */
    @ParameterizedTest
    @CsvSource({
        "PHEASANT,99.5F,86F,58-63%,99F,92F",
        "BOBWHITE,99.5F,84F,52-58%,99F,90F",
        "CHUKAR,99.5F,88F,63-63%,99F,90F",
        "COTURNIX,99.5F,86F,58-63%,99F,90F",
        "TURKEY,99.5F,84F,52-58%,98.5F,90F",
        "GUINEA_FOWL,99.5F,84F,52-58%,98.5F,90F",
        "MALLARD,99.5F,86F,58-63%,98.5F,90F",
        "PEAFOWL,99.5F,86F,58-63%,98.5F,90F",
        "CHICKEN,99.5F,86F,58-58%,98.5F,90F",
        "RED_LEGGED_PARTRIDGE,37.8C,85.4F,55-55%,37.4C,91.8F"
    })
    void settings_comeFromTheHandbookRow(
            Species species, String setter, String wetBulb, String humidity, String hatcher, String hatcherWetBulb) {
        var profile = SpeciesProfile.of(species);
        assertEquals(
                ProfileField.SETTER_TEMPERATURE.read(setter),
                profile.value(ProfileField.SETTER_TEMPERATURE).value());
        assertEquals(wetBulb, profile.setterWetBulb().value().low().toString().replace(".0F", "F"));
        assertEquals(
                humidity, profile.value(ProfileField.SETTER_HUMIDITY).value().text());
        assertEquals(
                ProfileField.HATCHER_TEMPERATURE.read(hatcher),
                profile.value(ProfileField.HATCHER_TEMPERATURE).value());
        assertEquals(
                hatcherWetBulb,
                profile.hatcherWetBulb().value().low().toString().replace(".0F", "F"));
    }

    @Test
    void alternatives_giveEverySourcesPeriod_sideBySide() {
        var told = SpeciesProfile.of(Species.PHEASANT).alternatives(ProfileField.PERIOD_DAYS).stream()
                .map(a -> a.source().words() + " " + a.value().text())
                .toList();
        assertEquals(
                List.of(
                        "MSU-FACTORS (recalled) 24",
                        "TAMU-B6092 (seen in a copy) 24.5",
                        "MU-G8353 (seen in a copy) 23.5",
                        "NCSU-CHRIST (seen) 24",
                        "YAMAK2016 (seen) 25",
                        "from memory 24"),
                told);
    }

    @Test
    void firstGuess_saysFromWhichSpecies_whereThereIsNoFigure() {
        var late = SpeciesProfile.of(Species.PEAFOWL).losses().lateDeadOfFertile();
        assertTrue(late.source().words().startsWith("computed: from pheasant"), late.toString());
    }

    /** Hatch of set in pheasants: 62.0 % (CETIN1997, seen), 61.9 % (FRONTE-WILD, seen), 72.0 % (NAGY2013, computed). */
    @Test
    void firstGuess_ofPheasant_addsUpToAPublishedHatch() {
        var l = SpeciesProfile.of(Species.PHEASANT).losses();
        double fertile = 1 - l.infertileOfSet().value();
        double dead = l.earlyDeadOfFertile().value()
                + l.midDeadOfFertile().value()
                + l.lateDeadOfFertile().value()
                + l.pippedDeadOfFertile().value();
        double hatched = fertile * (1 - dead)
                - l.contaminatedOfSet().value()
                - l.crackedOfSet().value();
        double saleable = hatched
                * (1 - l.culledOfHatched().value() - l.deadInBasketOfHatched().value());
        assertTrue(saleable > 0.55 && saleable < 0.72, "hatch of set " + saleable);
    }

    @Test
    void override_standsWithItsDate_andWhatFollowsFromItMoves() {
        var ours = SpeciesProfile.of(Species.CHUKAR).with(SpeciesOverride.of(ProfileField.PERIOD_DAYS, "24", SINCE));
        assertEquals(new Sourced<>(24.0, new Source.FarmOverride(SINCE)), ours.periodDays());
        assertEquals("this farm, since 2027-02-01", ours.periodDays().source().words());
        assertEquals(new Range<>(23.5, 24.5), ours.hatchWindowDays().value());
        assertEquals(22.5, ours.firstPipDay().value());
    }

    @Test
    void override_isStrongerThanWhatFollowsFromAnother() {
        var both = new SpeciesOverride(
                SINCE,
                java.util.Map.of(
                        ProfileField.TRANSFER_DAY, ProfileField.TRANSFER_DAY.read("20"),
                        ProfileField.LAST_TURN_DAY, ProfileField.LAST_TURN_DAY.read("18")));
        assertEquals(
                18, SpeciesProfile.of(Species.PHEASANT).with(both).lastTurnDay().value());
    }

    @ParameterizedTest
    @EnumSource(Species.class)
    void field_readsBackItsOwnText(Species species) {
        var profile = SpeciesProfile.of(species);
        for (var field : ProfileField.values()) {
            var value = profile.value(field).value();
            assertEquals(value, field.read(value.text()), field.word());
        }
    }

    @Test
    void field_saysWhatWouldBeRight_whenATemperatureHasNoUnit() {
        var refusal = assertThrows(OutOfRange.class, () -> ProfileField.SETTER_TEMPERATURE.read("99.5"));
        assertTrue(refusal.toString().contains("setter_temperature"), refusal.toString());
        assertTrue(refusal.toString().contains("99.5F"), refusal.toString());
        assertThrows(OutOfRange.class, () -> ProfileField.PERIOD_DAYS.read("NaN"));
        assertThrows(OutOfRange.class, () -> ProfileField.PERIOD_DAYS.read("soon"));
        assertThrows(OutOfRange.class, () -> ProfileField.PERIOD_RANGE_DAYS.read("25-24"));
        assertThrows(OutOfRange.class, () -> ProfileField.CANDLING_DAYS.read("7;x"));
    }

    private static List<Sourced<Double>> shares(FirstGuess guess) {
        return Stream.of(
                        guess.infertileOfSet(),
                        guess.earlyDeadOfFertile(),
                        guess.midDeadOfFertile(),
                        guess.lateDeadOfFertile(),
                        guess.pippedDeadOfFertile(),
                        guess.contaminatedOfSet(),
                        guess.crackedOfSet(),
                        guess.culledOfHatched(),
                        guess.deadInBasketOfHatched())
                .toList();
    }
}
