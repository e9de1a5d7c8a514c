package eggwright.desk.picture;

import com.google.zxing.ChecksumException;
import com.google.zxing.FormatException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.decoder.Decoder;
import java.util.regex.Pattern;

/** Reads a drawn code again, from the drawing. */
public final class QrReader {
    private static final int QUIET = 4;
    private static final Pattern SIDE = Pattern.compile("viewBox=\"0 0 (\\d+) ");
    private static final Pattern BAR = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-(\\d+)z");

    private QrReader() {}

    /** What the code in this SVG carries. */
    public static String read(String svg) {
        var side = SIDE.matcher(svg);
        if (!side.find()) {
            throw new AssertionError("No code in " + svg);
        }
        var modules = Integer.parseInt(side.group(1)) - 2 * QUIET;
        var dark = new BitMatrix(modules);
        BAR.matcher(svg).results().forEach(bar -> {
            var x = Integer.parseInt(bar.group(1)) - QUIET;
            var y = Integer.parseInt(bar.group(2)) - QUIET;
            for (int i = 0; i < Integer.parseInt(bar.group(3)); i++) {
                dark.set(x + i, y);
            }
        });
        try {
            return new Decoder().decode(dark).getText();
        } catch (ChecksumException | FormatException unreadable) {
            throw new AssertionError("This code cannot be read", unreadable);
        }
    }
}
