package eggwright.desk.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Shown to a device that came without encryption or under another name: how to get to the desk, and how to trust it. The
 * same steps stand on the sheet that is printed.
 *
 * @param farm its name
 * @param name of the desk
 * @param address of the desk
 * @param begin where a device gets the certificate that does not trust the desk yet
 * @param fingerprint of the certificate, in lines of eight pairs
 * @param style of a page that has to be whole in itself; empty where the frame gives it
 */
public record FirstSteps(
        String farm,
        DeskName name,
        String address,
        String begin,
        List<String> fingerprint,
        String style,
        Locale language) {
    /** Where the certificate lies; the only thing, beside these steps, that is given out in the open. */
    public static final String CERTIFICATE = "/authority.cer";

    private static final int PAIR_AND_COLON = 3;
    private static final int PAIRS = 8;

    /** The steps to a desk. */
    public static FirstSteps to(Lan lan, String farm, String style, Locale language) {
        return new FirstSteps(
                farm,
                lan.name(),
                lan.address().toString(),
                lan.firstSteps().toString(),
                lines(lan.authority().fingerprint()),
                style,
                language);
    }

    private static List<String> lines(String fingerprint) {
        var lines = new ArrayList<String>();
        for (int from = 0; from < fingerprint.length(); from += PAIRS * PAIR_AND_COLON) {
            var to = Math.min(from + PAIRS * PAIR_AND_COLON, fingerprint.length());
            lines.add(fingerprint.substring(from, to).replaceAll(":$", ""));
        }
        return lines;
    }

    /** Where the certificate is fetched from. */
    public String certificate() {
        return CERTIFICATE;
    }
}
