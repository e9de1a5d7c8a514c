package eggwright.trade.caution;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CautionsTest {
    private static final Pattern DOSE =
            Pattern.compile("\\d\\s*(ml|mg|g|l|oz|ppm|litres?|gallons?|parts?|minutes?|drops?)\\b");

    @ParameterizedTest
    @EnumSource(Place.class)
    void caution_isShort_namesAnAuthority_andGivesNoDose(Place place) {
        var caution = Cautions.at(place);
        assertTrue(
                caution.text().length() < 260,
                place.word() + " " + caution.text().length());
        assertFalse(caution.deferTo().isBlank(), place.word());
        assertFalse(caution.sources().isEmpty(), place.word());
        assertFalse(DOSE.matcher(caution.text()).find(), caution.text());
    }
}
