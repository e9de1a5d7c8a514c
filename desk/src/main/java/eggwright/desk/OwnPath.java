package eggwright.desk;

import java.util.regex.Pattern;

/** Tells a path of this desk from an address elsewhere, so that no form can send a visitor away. */
final class OwnPath {
    private static final Pattern FORM = Pattern.compile("/(?![/\\\\])[^\\s\\\\\\p{Cntrl}]*");

    private OwnPath() {}

    static boolean is(String path) {
        return FORM.matcher(path).matches();
    }
}
