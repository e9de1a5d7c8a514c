package eggwright.desk.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.EggsGathered;
import eggwright.book.entry.Finding;
import eggwright.book.entry.IncidentKind;
import eggwright.book.entry.IncidentNoted;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Payload;
import eggwright.book.entry.PayloadKinds;
import eggwright.book.fold.Ledger;
import eggwright.desk.form.Field;
import eggwright.desk.form.Form;
import eggwright.desk.form.Typed;
import eggwright.desk.part.CautionShown;
import eggwright.desk.words.Words;
import eggwright.invented.season.Season;
import eggwright.invented.truth.Truth;
import eggwright.trade.Species;
import eggwright.trade.caution.Cautions;
import eggwright.trade.caution.Place;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EntryFormsTest {
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final Words WORDS = Words.beside(EntryForms.class, Locale.ENGLISH);

    @Test
    void everyKindThatAPersonNotes_hasAForm() {
        var kinds = new TreeSet<>(PayloadKinds.words());
        kinds.removeAll(List.of("replaced", "withdrawn"));
        var forms = new TreeSet<String>();
        EntryForms.all().forEach(f -> forms.add(f.kind()));
        assertEquals(kinds, forms);
    }

    /** A season of entries, written as they would have been typed and read again, is the season. */
    @Test
    void whatIsWritten_isReadAsItWas() {
        var seen = new TreeSet<String>();
        for (var kept : Season.of(Truth.PLAIN, 3, LocalDate.of(2027, 3, 22)).entries()) {
            var payload = kept.entry().payload();
            var form = EntryForms.of(payload.kindWord());
            if (form.isPresent() && !payload.kindWord().equals("incident")) {
                var reader = new FormReader(form.get().written(payload, ZONE), WORDS, ZONE, pen -> Optional.empty())
                        .mending(form.get().moments(payload));
                assertEquals(payload, form.get().read(reader));
                assertEquals(List.of(), reader.toMend());
                seen.add(payload.kindWord());
            }
        }
        assertTrue(seen.size() > 15, seen.toString());
    }

    /** Eggs that a blind look took out would be gone before the first look could be held against it. */
    @Test
    void blindLook_marksAndTakesNothingOut() {
        var typed = Map.of("set", "14", "tray", "7", "seen_clear", "2", "seen_dead", "1", "look_sort", "second_blind");
        var reader = reader(typed);
        var look = assertInstanceOf(
                Looked.class, EntryForms.of("looked").orElseThrow().read(reader));
        assertEquals(List.of(), reader.toMend());
        assertEquals(0, look.takenOut());
        assertEquals(2, look.seen(Finding.CLEAR));
    }

    private static FormReader reader(Map<String, String> typed) {
        var lists = new TreeMap<String, List<String>>();
        typed.forEach((name, text) -> lists.put(name, List.of(text)));
        return new FormReader(new Typed(lists), WORDS, ZONE, pen -> Optional.empty());
    }

    @Test
    void everyForm_opensWithAllItsWords_onAnEmptyBookAndOnAFullOne() {
        var full = Ledger.of(
                        Season.of(Truth.PLAIN, 3, LocalDate.of(2027, 3, 22)).entries())
                .picture();
        for (var picture : List.of(new Ledger().picture(), full)) {
            var around = new Around(
                    picture, List.of(), ZonedDateTime.of(2027, 5, 3, 19, 0, 0, 0, ZONE), WORDS, Typed.nothing());
            for (var form : EntryForms.all()) {
                assertTrue(form.fields(around).stream().map(Field::label).noneMatch(String::isBlank), form.kind());
                assertTrue(WORDS.knows("kind." + form.kind()), form.kind());
                form.cautions()
                        .forEach(c -> assertFalse(CautionShown.of(Cautions.at(c), Locale.ENGLISH)
                                .title()
                                .isBlank()));
            }
        }
    }

    @Test
    void everySlip_isSaidAtOnce_besideItsField() {
        var reader = new FormReader(
                Typed.of(Map.of("kept", "12.5", "laid_from", "yesterday", "laid_to", "", "species", "phesant")),
                WORDS,
                ZONE,
                pen -> Optional.empty());
        EntryForms.of("eggs-gathered").orElseThrow().read(reader);
        var names = reader.toMend().stream().map(m -> m.name()).toList();
        assertTrue(names.containsAll(List.of("kept", "laid_from", "laid_to", "species")), names.toString());
    }

    @ParameterizedTest
    @CsvSource({
        "104C, Fahrenheit? Then write 104F.",
        "37F, Celsius? Then write 37C.",
        "212F, hotter than any machine. Look at the number"
    })
    void incidentThatReachedATemperatureOfTheOtherScale_isAskedAbout(String reached, String said) {
        var reader = reader(Map.of("incident", "too_hot", "reached", reached));
        EntryForms.of("incident").orElseThrow().read(reader);
        assertEquals(
                List.of("reached"), reader.toMend().stream().map(m -> m.name()).toList());
        assertTrue(
                reader.toMend().getFirst().message().contains(said),
                reader.toMend().toString());
    }

    /** A power cut may be cold, and a machine that ran away hot. */
    @ParameterizedTest
    @ValueSource(strings = {"20.0C", "5.0C", "-2.0C", "68.0F", "15.0F", "104.0F", "40.0C", ""})
    void incidentThatReachedWhatItMay_isKept(String reached) {
        var reader = reader(Map.of("incident", "power_cut", "reached", reached));
        var incident = assertInstanceOf(
                IncidentNoted.class, EntryForms.of("incident").orElseThrow().read(reader));
        assertEquals(List.of(), reader.toMend());
        assertEquals(reached, Objects.toString(incident.reached(), ""));
    }

    @Test
    void species_isThatOfThePen_unlessAnotherIsChosen() {
        var typed = new TreeMap<>(
                Map.of("pen", "4", "kept", "12", "laid_from", "2027-04-05", "laid_to", "2027-04-05", "species", ""));
        assertEquals(
                Species.CHUKAR, gathered(typed, Optional.of(Species.CHUKAR)).species());
        typed.put("species", "bobwhite");
        assertEquals(
                Species.BOBWHITE, gathered(typed, Optional.of(Species.CHUKAR)).species());
        typed.put("species", "");
        var unknown = new FormReader(Typed.of(typed), WORDS, ZONE, pen -> Optional.empty());
        EntryForms.of("eggs-gathered").orElseThrow().read(unknown);
        assertEquals(
                List.of("species"), unknown.toMend().stream().map(m -> m.name()).toList());
    }

    private static EggsGathered gathered(Map<String, String> typed, Optional<Species> held) {
        var reader = new FormReader(Typed.of(typed), WORDS, ZONE, pen -> held);
        var read = EntryForms.of("eggs-gathered").orElseThrow().read(reader);
        assertEquals(List.of(), reader.toMend());
        return assertInstanceOf(EggsGathered.class, read);
    }

    /** Noted in London while the farm's clock was in Chicago: mended by the farm's clock, the moment stays what it was. */
    @Test
    void momentOfAnIncident_keepsItsOwnOffset_unlessItIsChanged() {
        var form = EntryForms.of("incident").orElseThrow();
        var cut = new IncidentNoted(
                IncidentKind.POWER_CUT, null, OffsetDateTime.parse("2027-04-05T19:30+01:00"), null, "Storm");
        var chicago = ZoneId.of("America/Chicago");
        var typed = form.written(cut, chicago);
        assertEquals("2027-04-05T13:30", typed.text("until"));
        assertEquals(cut, read(form, typed, chicago, cut));
        var later = new TreeMap<String, String>();
        typed.values().forEach((name, values) -> later.put(name, values.getFirst()));
        later.put("until", "2027-04-05T14:00");
        assertEquals(
                new IncidentNoted(
                        IncidentKind.POWER_CUT, null, OffsetDateTime.parse("2027-04-05T14:00-05:00"), null, "Storm"),
                read(form, Typed.of(later), chicago, cut));
    }

    private static Payload read(EntryForm form, Typed typed, ZoneId zone, Payload was) {
        return form.read(new FormReader(typed, WORDS, zone, pen -> Optional.empty()).mending(form.moments(was)));
    }

    /** Each caution stands on the form of the work that it belongs to. */
    @Test
    void cautions_standWhereTheWorkIs() {
        var where = new EnumMap<Place, TreeSet<String>>(Place.class);
        EntryForms.all()
                .forEach(f -> f.cautions()
                        .forEach(c ->
                                where.computeIfAbsent(c, p -> new TreeSet<>()).add(f.kind())));
        assertEquals(EnumSet.allOf(Place.class), where.keySet());
        Map.of(
                        Place.ROTTEN_EGGS,
                                List.of("looked", "broken-out", "eggs-moved", "transferred", "eggs-discarded"),
                        Place.BREAK_OUT, List.of("broken-out"),
                        Place.DUST, List.of("transferred", "taken-off", "machine-cleaned"),
                        Place.DISINFECTANT, List.of("machine-cleaned"),
                        Place.CURRENT_AND_WATER,
                                List.of("climate-noted", "machine-added", "machine-cleaned", "incident"),
                        Place.HUMANE_KILLING, List.of("taken-off", "broken-out"),
                        Place.REPORTABLE_SIGNS, List.of("incident", "pen-changed", "chicks-died", "eggs-gathered"),
                        Place.DISPOSAL, List.of("eggs-discarded", "broken-out", "chicks-died"))
                .forEach((place, forms) -> assertTrue(
                        where.getOrDefault(place, new TreeSet<>()).containsAll(forms), place + " " + where.get(place)));
    }

    @Test
    void seldomNeeded_isFoldedAway_andUnfoldedWhereItHoldsSomething() {
        var around = new Around(
                new Ledger().picture(),
                List.of(),
                ZonedDateTime.of(2027, 5, 3, 19, 0, 0, 0, ZONE),
                WORDS,
                Typed.of(Map.of("tray", "7")));
        var takeOff = Form.of(
                "",
                "",
                "",
                EntryForms.of("taken-off").orElseThrow().fields(around).toArray(Field[]::new));
        assertTrue(fold(takeOff).isOpen(), "the link named a tray");
        var set = Form.of(
                "",
                "",
                "",
                EntryForms.of("eggs-set").orElseThrow().fields(around).toArray(Field[]::new));
        var rows = set.filledFrom(Typed.of(Map.of("lot.1.mark", "red"))).fields().stream()
                .filter(Field.Rows.class::isInstance)
                .map(Field.Rows.class::cast)
                .findFirst()
                .orElseThrow();
        var open = rows.rows().stream()
                .map(row -> row.getLast() instanceof Field.Fold fold && fold.isOpen())
                .toList();
        assertEquals(List.of(false, true, false, false, false, false), open);
    }

    private static Field.Fold fold(Form form) {
        return (Field.Fold) form.fields().getLast();
    }
}
