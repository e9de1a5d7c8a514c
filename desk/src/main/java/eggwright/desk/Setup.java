package eggwright.desk;

import eggwright.desk.part.OutsideShown;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/**
 * What a desk is opened with.
 *
 * @param farm its name, asked again for each page, since it may be changed
 * @param language of the texts
 * @param port to listen on for this machine itself; 0 takes any that is free
 * @param reach who else can reach it
 * @param outside which places are outside their band, asked again for each page
 * @param pages of all features
 */
public record Setup(
        Supplier<String> farm,
        Locale language,
        int port,
        Reach reach,
        Supplier<OutsideShown> outside,
        List<Pages> pages) {
    public Setup {
        pages = List.copyOf(pages);
    }

    /** For this machine only. */
    public Setup(Supplier<String> farm, Locale language, int port, List<Pages> pages) {
        this(farm, language, port, new Reach.ThisMachine(), () -> OutsideShown.NOTHING, pages);
    }
}
