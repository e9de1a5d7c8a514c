package eggwright.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class SpeciesTest {
    @ParameterizedTest
    @EnumSource(Species.class)
    void parse_readsBackEveryWord(Species species) {
        assertEquals(new SpeciesWord.Known(species), Species.parse(species.word()));
        assertEquals(new SpeciesWord.Known(species), Species.parse(species.scientificName()));
        assertEquals(new SpeciesWord.Known(species), Species.parse(species.name()));
    }

    /** Synonyms: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "bobwhite quail,BOBWHITE",
        "japanese quail,COTURNIX",
        "coturnix quail,COTURNIX",
        "gray partridge,GREY_PARTRIDGE",
        "hungarian partridge,GREY_PARTRIDGE",
        "mallard duck,MALLARD",
        "guinea-fowl,GUINEA_FOWL",
        "Guineafowl,GUINEA_FOWL",
        "Ring-Necked Pheasant,PHEASANT",
        "red_legged_partridge,RED_LEGGED_PARTRIDGE",
        "  Pheasants ,PHEASANT",
        "turkeys,TURKEY",
        "peacock,PEAFOWL"
    })
    void parse_readsSynonyms_inAnyCaseAndWithAnyHyphen(String typed, Species meant) {
        assertEquals(new SpeciesWord.Known(meant), Species.parse(typed));
    }

    @ParameterizedTest
    @CsvSource({
        "phesant,PHEASANT", "bobwite,BOBWHITE", "chuker,CHUKAR", "red legged partrige,RED_LEGGED_PARTRIDGE",
        "grey partrige,GREY_PARTRIDGE", "coturnyx,COTURNIX", "turky,TURKEY", "ginea fowl,GUINEA_FOWL",
        "malard,MALLARD", "peafowel,PEAFOWL", "chiken,CHICKEN"
    })
    void parse_namesTheNearestSpecies_whenAWordIsMisspelt(String typed, Species meant) {
        assertEquals(new SpeciesWord.Unknown(typed, meant), Species.parse(typed));
    }

    @Test
    void parse_asksWhetherTheNearWordWasMeant() {
        var unknown = new SpeciesWord.Unknown("phesant", Species.PHEASANT);
        assertEquals(unknown, Species.parse("phesant"));
        assertEquals("\"phesant\" is not a species Eggwright knows. Did you mean pheasant?", unknown.message());
    }
}
