package eggwright.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.fold.Ledger;
import eggwright.book.picture.FarmPicture;
import eggwright.book.picture.Picture;
import eggwright.invented.season.Season;
import eggwright.invented.truth.Truth;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class PictureBytesTest {
    private static final Ledger SEASON =
            Ledger.of(Season.of(Truth.PLAIN, 3, LocalDate.parse("2027-03-22")).entries());

    /** Notes and discrepancies hold one of several kinds, which have no form in bytes; no day sheet asks for them. */
    private static Picture withoutNotes(Picture picture) {
        var farm = picture.farm();
        return new Picture(
                new FarmPicture(farm.habits(), farm.overrides(), List.of(), farm.chicks()),
                picture.pens(),
                picture.eggRoom(),
                picture.machines(),
                picture.sensors(),
                picture.sets(),
                picture.accounts(),
                picture.orders(),
                List.of(),
                picture.entryCount());
    }

    @Test
    void picture_comesBackAsItWas() {
        for (var at : List.of("2027-03-25T12:00:00Z", "2027-05-10T12:00:00Z", "2027-12-01T00:00:00Z")) {
            var picture = withoutNotes(SEASON.asOf(Instant.parse(at)).picture());
            assertEquals(picture, PictureBytes.read(PictureBytes.write(picture)), at);
        }
    }

    @Test
    void emptyPicture_comesBackAsItWas() {
        var picture = Ledger.of(List.of()).picture();
        assertEquals(picture, PictureBytes.read(PictureBytes.write(picture)));
    }

    @Test
    void bytesThatWereCutShort_areNotRead() {
        var bytes = PictureBytes.write(withoutNotes(SEASON.picture()));
        assertTrue(bytes.length > 1000);
        for (int length = 0; length < bytes.length; length += 997) {
            var some = Arrays.copyOf(bytes, length);
            assertThrows(RuntimeException.class, () -> PictureBytes.read(some));
        }
    }
}
