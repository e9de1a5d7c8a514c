package eggwright.desk.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.units.OutOfRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class DeskNameTest {
    @ParameterizedTest
    @CsvSource({
        "Larkfield Game Farm, larkfield-game-farm.local",
        "Søndergård & Søn, sondergard-son.local",
        "Élevage du Pré, elevage-du-pre.local",
        "O’Hara’s, oharas.local",
        "'', eggwright.local",
        "-- --, eggwright.local",
        "12, 12.local"
    })
    void name_isMadeOfTheFarms(String farm, String name) {
        assertEquals(name, DeskName.of(farm).text());
    }

    @Test
    void name_ofALongFarm_fitsALabel() {
        assertEquals(63 + ".local".length(), DeskName.of("g".repeat(100)).text().length());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "192.168.1.4",
                "::1",
                "larkfield",
                "lark field.local",
                "-lark.local",
                "lark_field.local",
                "localhost",
                "desk.localhost",
                "larkfield.local.",
                "https://larkfield.local",
                "larkfield.local:4748",
                ""
            })
    void bareAddress_orWhatIsNoName_isRefused(String text) {
        assertThrows(OutOfRange.class, () -> new DeskName(text));
    }

    @Test
    void name_isLocal_whenDevicesFindItByThemselves() {
        assertTrue(new DeskName("Larkfield.LOCAL").isLocal());
        assertFalse(new DeskName("desk.larkfield.example").isLocal());
        assertFalse(new DeskName("desk.larkfield.local").isLocal());
    }
}
