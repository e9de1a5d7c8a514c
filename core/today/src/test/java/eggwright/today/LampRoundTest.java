package eggwright.today;

import static eggwright.today.Farmhouse.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.LoadSet;
import eggwright.book.entry.Lot;
import eggwright.book.entry.SecondLookAsked;
import eggwright.book.name.PenName;
import eggwright.book.picture.LoadPicture;
import eggwright.today.lamp.Judging;
import eggwright.today.lamp.Judging.Trust;
import eggwright.today.lamp.LampRound;
import eggwright.today.lamp.LampTray;
import eggwright.today.schedule.LookDay;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a phone takes into the dark room. */
class LampRoundTest {
    private final Farmhouse farm = Farmhouse.usual();

    private LampTray only(String now) {
        var trays = LampRound.of(farm.picture(), farm.at(on(now))).trays();
        assertEquals(1, trays.size());
        return trays.getFirst();
    }

    private static Lot lot(@Nullable String pen, int eggs, @Nullable String mark) {
        return new Lot(pen == null ? null : new PenName(pen), Species.PHEASANT, null, null, eggs, mark, List.of());
    }

    private void putIn(Lot... lots) {
        farm.note(on("2027-04-05T08:00"), setting("14", new LoadSet(tray(7), SETTER, SHELF, null, List.of(lots))));
    }

    @Test
    void tray_isAsOldAsTheFarmsCalendarSays_andDueUntilItWasLookedAt() {
        putIn(lot("4", 54, null));
        var tray = only("2027-04-12T19:00");
        assertEquals(7, tray.day());
        assertEquals(54, tray.eggs());
        assertEquals(List.of(7), tray.looks().stream().map(LookDay::day).toList());

        farm.note(on("2027-04-12T20:00"), look("14", 7, FindingCount.removed(Finding.CLEAR, 2)));
        assertEquals(List.of(), only("2027-04-12T21:00").looks());
        assertEquals(52, only("2027-04-12T21:00").eggs());
    }

    @Test
    void tray_thatWentOver_isNoMoreForTheLamp() {
        putIn(lot("4", 54, null));
        farm.note(on("2027-04-26T20:00"), transfer(HATCHER, "14", 7));
        assertEquals(
                List.of(),
                LampRound.of(farm.picture(), farm.at(on("2027-04-27T08:00"))).trays());
    }

    @Test
    void pens_areTold_whereEveryEggOfTheTrayCanBeToldApart() {
        putIn(lot("4", 30, "blue dot"), lot("9", 24, "cross"));
        assertEquals(
                List.of("4 30 blue dot", "9 24 cross"),
                only("2027-04-12T19:00").pens().stream()
                        .map(p -> p.pen() + " " + p.eggs() + " " + p.mark())
                        .toList());
    }

    @Test
    void pens_areNotTold_whereSomeEggsLookAlike() {
        putIn(lot("4", 30, "blue dot"), lot("9", 24, null));
        assertEquals(List.of(), only("2027-04-12T19:00").pens());
    }

    /** Trade handbook, candling: day 7 for pale shells, day 8 to 10 for dark pheasant and guinea fowl (from memory). */
    @ParameterizedTest
    @CsvSource({
        "PHEASANT, 5, TOO_EARLY",
        "PHEASANT, 8, PALE_SHELLS_ONLY",
        "PHEASANT, 10, CAN_BE_JUDGED",
        "PHEASANT, 22, TOO_LATE",
        "CHICKEN, 7, CAN_BE_JUDGED",
        "GUINEA_FOWL, 7, TOO_EARLY"
    })
    void lamp_isTrustedAsFarAsTheHandbookDoes(Species species, int day, Trust trust) {
        assertEquals(trust, Judging.of(SpeciesProfile.of(species)).on(day));
    }

    private LoadPicture tray7() {
        return farm.picture()
                .set(Farmhouse.set("14"))
                .flatMap(set -> set.load(tray(7)))
                .orElseThrow();
    }

    @Test
    void secondLook_isWanted_untilABlindLookWasTaken() {
        putIn(lot("4", 54, null));
        farm.note(on("2027-04-12T18:00"), new SecondLookAsked(Farmhouse.set("14"), List.of(tray(7)), null));
        var load = tray7();
        assertTrue(load.secondLooks().wanted().isPresent());

        farm.note(on("2027-04-12T19:00"), blind("14", 7));
        var after = tray7();
        assertTrue(after.secondLooks().wanted().isEmpty());
        assertEquals(List.of(), after.looks());
        assertEquals(
                List.of(7),
                only("2027-04-12T19:30").looks().stream().map(LookDay::day).toList());
    }
}
