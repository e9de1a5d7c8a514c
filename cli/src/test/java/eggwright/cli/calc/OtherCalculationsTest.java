package eggwright.cli.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import eggwright.cli.Run;
import eggwright.cli.voice.Status;
import java.io.IOException;
import java.time.Duration;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OtherCalculationsTest {
    /** The moments are sums of up to 55 chances; Skellam's closed forms are exact. */
    private static final double ROUNDING = 1e-9;

    /** Mean n a/(a+b) and variance n a b (a+b+n) / ((a+b)^2 (a+b+1)): Skellam 1948, J. R. Stat. Soc. B 10:257. */
    @Test
    void predict_hasTheClosedMomentsOfTheBetaBinomial() throws IOException {
        var json = json("calc", "predict", "--trials", "54", "--alpha", "40", "--beta", "8", "--at-least", "45");
        assertEquals(54 * 40 / 48.0, json.get("mean").doubleValue(), ROUNDING);
        assertEquals(
                54 * 40.0 * 8 * 102 / (48.0 * 48 * 49), json.get("variance").doubleValue(), ROUNDING);
        assertTrue(json.get("q025").isInt() && json.get("q50").isInt());
        assertTrue(json.get("q025").intValue() <= json.get("q10").intValue());
        assertTrue(json.get("at_least_probability").doubleValue() > 0.5);
    }

    /** With alpha = beta = 1 every count 0 to n is as likely: the chance of 6 or more of 10 is 5 in 11. */
    @Test
    void predict_isEven_whenNothingIsKnown() throws IOException {
        var json = json("calc", "predict", "--trials", "10", "--alpha", "1", "--beta", "1", "--at-least", "6");
        assertEquals(5 / 11.0, json.get("at_least_probability").doubleValue(), ROUNDING);
        assertEquals(5, json.get("q50").intValue());
    }

    @Test
    void predict_saysNoChance_whenMoreThanAllAreWanted() throws IOException {
        var json = json("calc", "predict", "--trials", "10", "--alpha", "1", "--beta", "1", "--at-least", "99");
        assertEquals(0, json.get("at_least_probability").doubleValue());
    }

    @Test
    void dates_keepTheHourAndTheOffset() throws IOException {
        var json = json("calc", "dates", "--species", "pheasant", "--set", "2027-04-05T08:00-05:00");
        var set = OffsetDateTime.parse("2027-04-05T08:00-05:00");
        assertEquals(set, OffsetDateTime.parse(json.get("set").textValue()));
        var first = OffsetDateTime.parse(json.get("candlings").get(0).textValue());
        long day = Duration.between(set, first).toDays();
        assertTrue(day == 7 || day == 8, first.toString());
        assertEquals(set.toOffsetTime(), first.toOffsetTime());
        var from = OffsetDateTime.parse(json.get("hatch_window").get("from").textValue());
        var to = OffsetDateTime.parse(json.get("hatch_window").get("to").textValue());
        assertTrue(OffsetDateTime.parse(json.get("transfer").textValue()).isBefore(from));
        assertTrue(from.isBefore(to));
    }

    /** The clocks of Chicago go forward on 14 March 2027 (IANA time zone database). */
    @Test
    void dates_keepTheLocalHour_acrossAChangeOfClocks() throws IOException {
        var json = json(
                "calc",
                "dates",
                "--species",
                "pheasant",
                "--set",
                "2027-03-08T08:00-06:00",
                "--zone",
                "America/Chicago");
        assertTrue(json.get("candlings").get(0).textValue().endsWith("T08:00:00-05:00"), json.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-02-30T08:00-05:00", "2027-04-05", "1899-04-05T08:00Z", "2100-04-05T08:00Z"})
    void dates_refuseADateThatCannotBe(String set) {
        var run = Run.of("calc", "dates", "--species", "pheasant", "--set", set);
        assertEquals(Status.WRONG_INPUT, run.status());
        assertTrue(run.err().startsWith("--set: "), run.err());
    }

    @Test
    void species_namesTheNearOne_whenMistyped() {
        var run = Run.of("calc", "species", "feasant");
        assertEquals(Status.WRONG_INPUT, run.status());
        assertTrue(run.err().contains("Did you mean pheasant?"), run.err());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "pheasant",
                "bobwhite",
                "chukar",
                "red-legged partridge",
                "grey partridge",
                "coturnix",
                "turkey",
                "guinea fowl",
                "mallard",
                "peafowl",
                "chicken"
            })
    void species_givesEachValueItsSource(String word) throws IOException {
        var words = ("calc species " + word).split(" ");
        var json = json(words);
        assertEquals(word, json.get("species").textValue());
        for (var field : eggwright.trade.ProfileField.values()) {
            var value = json.get(field.word());
            assertTrue(value.size() >= 2 && !value.get("source").textValue().isBlank(), field.word());
        }
        assertTrue(json.get("period_days").get("days").doubleValue() > 10);
    }

    private static JsonNode json(String... words) throws IOException {
        var all = java.util.Arrays.copyOf(words, words.length + 1);
        all[words.length] = "--json";
        var run = Run.of(all);
        assertEquals(Status.DONE, run.status(), run.err());
        return new ObjectMapper().readTree(run.out());
    }
}
