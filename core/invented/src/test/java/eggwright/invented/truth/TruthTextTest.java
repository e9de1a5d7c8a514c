package eggwright.invented.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.invented.TruthDeck;
import eggwright.trade.Species;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TruthTextTest {
    @Test
    void text_givesTheTruthBack_forAnyTruth() {
        var truths = new ArrayList<Truth>(List.of(Truth.PLAIN, Truth.PLAIN.withLosses(List.of())));
        truths.addAll(TruthDeck.varied(3, 40));
        truths.addAll(TruthDeck.outside(4, 28));
        for (var truth : truths) {
            assertEquals(new TruthReading.Read(truth), TruthText.read(TruthText.write(truth)));
        }
    }

    @Test
    void defaultTruth_isThePlainFarm_keyForKey() {
        var text = ShippedTruths.text("default").orElseThrow();
        var bare = text.lines().filter(l -> !l.isBlank() && !l.startsWith("#")).toList();
        var written =
                TruthText.write(Truth.PLAIN).lines().filter(l -> !l.isBlank()).toList();
        assertEquals(written, bare);
        assertEquals(new TruthReading.Read(Truth.PLAIN), TruthText.read(text));
    }

    @Test
    void shippedTruths_areReadable_everyOne() {
        for (var name : ShippedTruths.names()) {
            var reading = TruthText.read(ShippedTruths.text(name).orElseThrow());
            assertTrue(reading instanceof TruthReading.Read, () -> name + ": " + reading);
        }
    }

    @Test
    void text_keepsThePlainFarm_whereItIsSilent() {
        var reading = TruthText.read("pen Hill / species = bobwhite\r\npen Hill / hens = 30\r\nevent = none\r\n");
        var pen = new PenTruth(
                "Hill",
                Species.BOBWHITE,
                PenTruth.PLAIN.cocks(),
                30,
                PenTruth.PLAIN.layPct(),
                PenTruth.PLAIN.layRiseDays(),
                PenTruth.PLAIN.layPeakDays(),
                PenTruth.PLAIN.layFallPctPerWeek(),
                PenTruth.PLAIN.fertilityPct(),
                PenTruth.PLAIN.driftSd());
        assertEquals(new TruthReading.Read(Truth.PLAIN.withPens(List.of(pen))), reading);
    }

    @Test
    void text_isRefusedWithEveryMistake_eachWithItsLine() {
        var reading = TruthText.read("""
                # A truth with mistakes
                lamp / looks = 8, soon
                lamp / look = 8
                pen Hill / hens = many
                pen Dale / species = heron
                lampe / looks = 8
                season / sets = 99
                take off / counted_by = egg
                season / sets = 12
                just words
                farm = none
                """);
        assertEquals(
                List.of(
                        "Line 9: season / sets stands twice, first on line 7. Keep one.",
                        "Line 10: \"just words\" is not of the form section / key = value.",
                        "Line 7, season: sets is 99; it runs from 1 to 40.",
                        "Line 4, pen Hill / hens: \"many\" is not a whole number such as 14.",
                        "Line 5, pen Dale / species: \"heron\" is not one of pheasant, bobwhite, chukar,"
                                + " red-legged partridge, grey partridge, coturnix, turkey, guinea fowl, mallard, peafowl,"
                                + " chicken.",
                        "Line 3: lamp has no key \"look\". It has looks, at_transfer, missed_clear_pct, missed_dead_pct,"
                                + " live_pulled_pct, doubtful_pct, unsorted_pct, careless_pct, careless_times,"
                                + " opened_clears_pct.",
                        "Line 2, lamp / looks: \"soon\" is not a whole number such as 14.",
                        "Line 8, take off / counted_by: \"egg\" is not one of load, basket, set.",
                        "Line 6: \"lampe\" is not a section. There are farm, season, pen NAME, event NAME, losses NAME,"
                                + " trend, scatter, burst, egg room, machine NAME, section NAME, trays, power cut NAME, lamp,"
                                + " take off, notebook, orders.",
                        "Line 11: \"farm\" cannot be none."),
                ((TruthReading.Refused) reading).reasons());
    }

    @Test
    void text_isRefused_whenAnEventNamesNoPen() {
        var reading = TruthText.read("event 1 / pen = Nowhere\n");
        assertTrue(
                reading instanceof TruthReading.Refused it
                        && it.reasons().getFirst().startsWith("An entry of event names the pen \"Nowhere\""),
                () -> reading.toString());
    }

    @Test
    void page_namesEveryKey_ofTheFormat() throws IOException {
        var page = Files.readString(Path.of("../../docs/formats/truth.md"));
        TruthText.write(Truth.PLAIN
                        .withEvents(List.of(new PenEventTruth("Barn", PenEventTruth.What.COCK_FAILS, 1, 0, 0)))
                        .withPowerCuts(List.of(PowerCutTruth.PLAIN)))
                .lines()
                .filter(l -> !l.isBlank())
                .map(l -> l.substring(l.indexOf('/') + 1, l.indexOf('=')).strip())
                .distinct()
                .forEach(key -> assertTrue(page.contains("`" + key + "`"), () -> "The page lacks " + key));
    }
}
