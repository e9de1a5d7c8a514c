package eggwright.desk.network;

import eggwright.units.OutOfRange;
import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The fixed name of a desk on its network, as {@code larkfield.local}. What phones keep belongs to this name, so it is
 * chosen once. Labels as RFC 1123, section 2.1, and RFC 1035, section 2.3.4 allow, at least two of them, and never a bare address.
 */
public record DeskName(String text) {
    /** The ending of names that devices find by asking one another (RFC 6762, multicast DNS). */
    public static final String LOCAL = ".local";

    private static final int LONGEST_LABEL = 63;
    private static final int LONGEST = 253;
    private static final Pattern LABELS =
            Pattern.compile("([a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?\\.)+[a-z]([a-z0-9-]{0,61}[a-z0-9])?");

    public DeskName {
        text = text.strip().toLowerCase(Locale.ROOT);
        if (!LABELS.matcher(text).matches() || text.length() > LONGEST) {
            throw new OutOfRange(
                    "\"" + text + "\" cannot be the desk’s name on the network. "
                            + "Write letters, digits and dashes with a dot before the ending, as larkfield.local; no bare address.");
        }
        if (text.equals("localhost") || text.endsWith(".localhost")) {
            throw new OutOfRange(
                    "\"" + text + "\" is a name of each machine for itself. Write another, as larkfield.local.");
        }
    }

    /** A name made of the farm's: {@code larkfield-game-farm.local}. */
    public static DeskName of(String farm) {
        var plain = Normalizer.normalize(farm, Normalizer.Form.NFD).toLowerCase(Locale.ROOT);
        var label = spelled(plain).replaceAll("\\p{M}|[’']", "").replaceAll("[^a-z0-9]+", "-");
        var shortened =
                label.substring(0, Math.min(label.length(), LONGEST_LABEL)).replaceAll("^-+|-+$", "");
        return new DeskName((shortened.isEmpty() ? "eggwright" : shortened) + LOCAL);
    }

    /** Letters that are no others with a mark. */
    private static String spelled(String name) {
        return name.replace("ø", "o")
                .replace("æ", "ae")
                .replace("œ", "oe")
                .replace("ß", "ss")
                .replace("ł", "l")
                .replace("đ", "d")
                .replace("ð", "d")
                .replace("þ", "th");
    }

    /** Whether devices find it without any help of the router. */
    public boolean isLocal() {
        return text.endsWith(LOCAL) && text.indexOf('.') == text.length() - LOCAL.length();
    }

    @Override
    public String toString() {
        return text;
    }
}
