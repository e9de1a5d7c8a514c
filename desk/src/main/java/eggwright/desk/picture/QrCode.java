package eggwright.desk.picture;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/**
 * A QR code (ISO/IEC 18004) as a drawing: dark on white on every page, for a camera needs it so, with the four modules of
 * quiet room around it that the standard asks for. A fifth of it may be dirty or torn (level M is about 15 %, Q about
 * 25 %; Q is taken).
 */
public final class QrCode {
    private static final int QUIET = 4;

    private QrCode() {}

    /**
     * The code as part of a page.
     *
     * @param text that it carries, at most some hundred characters
     * @param title what it is, for those who cannot see it
     */
    public static String inline(String text, String title) {
        return svg(text, title, "");
    }

    /** The code as a file of its own, 40 mm wide when printed as it is. */
    public static String file(String text, String title) {
        return svg(text, title, " xmlns=\"http://www.w3.org/2000/svg\" width=\"40mm\" height=\"40mm\"");
    }

    private static String svg(String text, String title, String more) {
        var code = matrix(text);
        var dark = new StringBuilder();
        for (int y = 0; y < code.getHeight(); y++) {
            for (int x = 0; x < code.getWidth(); x++) {
                if (code.get(x, y)) {
                    int from = x;
                    while (x + 1 < code.getWidth() && code.get(x + 1, y)) {
                        x++;
                    }
                    int length = x + 1 - from;
                    dark.append('M')
                            .append(from)
                            .append(' ')
                            .append(y)
                            .append('h')
                            .append(length);
                    dark.append("v1h-").append(length).append('z');
                }
            }
        }
        int side = code.getWidth();
        return "<svg class=\"qr\"" + more + " viewBox=\"0 0 " + side + " " + side
                + "\" role=\"img\" shape-rendering=\"crispEdges\"><title>" + Svg.escaped(title)
                + "</title><rect width=\"" + side + "\" height=\"" + side
                + "\" fill=\"#FFFFFF\"/><path fill=\"#000000\" d=\""
                + dark + "\"/></svg>";
    }

    private static BitMatrix matrix(String text) {
        try {
            return new QRCodeWriter()
                    .encode(
                            text,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.Q,
                                    EncodeHintType.CHARACTER_SET,
                                    "UTF-8",
                                    EncodeHintType.MARGIN,
                                    QUIET));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("This is too long for a code: " + text, tooLong);
        }
    }
}
