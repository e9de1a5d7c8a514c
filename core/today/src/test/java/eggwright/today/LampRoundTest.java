package eggwright.today;

import static eggwright.today.Farmhouse.*;
import static org.junit.jupiter.api.Assertions.assertEquals;

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
        assertEquals(List.of("4 30 blue dot", "9 24 cross"), told("2027-04-12T19:00"));
    }

    /** Where the eggs of one pen are marked, the others are told by having no mark; a third pen without one could not. */
    @Test
    void pens_areTold_whereOneOfThemIsNotMarked_andNotWhereTwoAre() {
        putIn(lot("4", 30, "blue dot"), lot("9", 24, null));
        assertEquals(List.of("4 30 blue dot", "9 24 null"), told("2027-04-12T19:00"));
    }

    @Test
    void pens_areNotTold_whereTheirEggsLookAlike() {
        putIn(lot("4", 20, "blue dot"), lot("9", 20, null), lot("Oak", 14, null));
        assertEquals(List.of(), told("2027-04-12T19:00"));
    }

    @Test
    void pens_areNotTold_whereTwoHaveOneMark() {
        putIn(lot("4", 30, "blue dot"), lot("9", 24, "Blue dot "));
        assertEquals(List.of(), told("2027-04-12T19:00"));
    }

    @Test
    void pens_areTold_byPlace() {
        putIn(placed("4", 1, 2, 3), placed("9", 7, 8));
        assertEquals(
                List.of("4 3 [1, 2, 3]", "9 2 [7, 8]"),
                only("2027-04-12T19:00").pens().stream()
                        .map(p -> p.pen() + " " + p.eggs() + " " + p.places())
                        .toList());
    }

    /** The shells keep their marks: that an egg was once counted without its pen stops nobody from naming the next. */
    @Test
    void pens_areToldStill_afterACountOfTheWholeTray_withoutTheirEggs() {
        putIn(lot("4", 30, "blue dot"), lot("9", 24, "cross"));
        farm.note(on("2027-04-12T20:00"), look("14", 7, FindingCount.removed(Finding.CLEAR, 2)));
        assertEquals(List.of("4 null blue dot", "9 null cross"), told("2027-04-12T21:00"));
    }

    private static Lot placed(String pen, Integer... places) {
        return new Lot(new PenName(pen), Species.PHEASANT, null, null, places.length, null, List.of(places));
    }

    private List<String> told(String now) {
        return only(now).pens().stream()
                .map(p -> p.pen() + " " + p.eggs() + " " + p.mark())
                .toList();
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
    void blindLook_isKeptApart_andNoLookOfTheLoad() {
        putIn(lot("4", 54, null));
        farm.note(on("2027-04-12T18:00"), new SecondLookAsked(Farmhouse.set("14"), List.of(tray(7)), null));
        var load = tray7();
        assertEquals(1, load.secondLooks().asked().size());

        farm.note(on("2027-04-12T19:00"), blind("14", 7));
        var after = tray7();
        assertEquals(1, after.secondLooks().taken().size());
        assertEquals(List.of(), after.looks());
        assertEquals(
                List.of(7),
                only("2027-04-12T19:30").looks().stream().map(LookDay::day).toList());
    }
}
