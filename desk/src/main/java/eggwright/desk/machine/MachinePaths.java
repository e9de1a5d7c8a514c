package eggwright.desk.machine;

import eggwright.book.name.MachineName;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Where the pages of the machines are. */
public final class MachinePaths {
    static final String ALL = "/machines";
    static final String WET_BULB_TABLE = ALL + "/wet-bulb-table";

    private MachinePaths() {}

    /** The page of one machine. */
    public static String of(MachineName machine) {
        return ALL + "/" + encoded(machine.text());
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
