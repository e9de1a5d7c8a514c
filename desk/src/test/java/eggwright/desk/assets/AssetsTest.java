package eggwright.desk.assets;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;

final class AssetsTest {
    private final Assets assets = new Assets();

    @Test
    void url_holdsTheHashOfWhatIsServed() throws Exception {
        var url = assets.url("css/tokens.css");
        var served = assets.served(url.substring(Assets.ROOT.length())).orElseThrow();

        var hash = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(served.plain()));
        assertEquals("/assets/css/tokens." + hash.substring(0, 10) + ".css", url);
        assertEquals("text/css; charset=utf-8", served.type());
    }

    @Test
    void gzip_unpacksToTheSame_andIsLeftOutWhereItSavesNothing() throws IOException {
        var css = assets.served(name("css/tokens.css")).orElseThrow();
        try (var in = new GZIPInputStream(new ByteArrayInputStream(css.gzip()))) {
            assertArrayEquals(css.plain(), in.readAllBytes());
        }
        assertEquals(
                0, assets.served(name("font/atkinson-next.woff2")).orElseThrow().gzip().length);
    }

    @Test
    void styleSheet_asksForTheTypeface_underItsHashedName() {
        var css = new String(assets.served(name("css/tokens.css")).orElseThrow().plain(), UTF_8);

        assertTrue(css.contains("url(\"" + assets.url("font/atkinson-next.woff2") + "\")"), css.substring(0, 400));
    }

    @Test
    void nothingElse_isServed() {
        assertTrue(assets.served("css/tokens.css").isEmpty());
        assertTrue(assets.served("css/base.0123456789.css").isEmpty());
        assertTrue(assets.served("../messages.0123456789.properties").isEmpty());
        assertThrows(IllegalArgumentException.class, () -> assets.url("css/none.css"));
        assertThrows(IllegalArgumentException.class, () -> assets.url("../messages.properties"));
    }

    private String name(String asset) {
        return assets.url(asset).substring(Assets.ROOT.length());
    }
}
