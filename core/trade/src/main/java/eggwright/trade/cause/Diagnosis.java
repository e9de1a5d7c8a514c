package eggwright.trade.cause;

import eggwright.trade.source.Source;
import java.util.List;

/**
 * A line of the trade's table of troubles.
 *
 * @param sign what is seen
 * @param stage where it is seen: at candling, break-out, hatch, on the chick
 * @param probableCause one cause that would explain it; other lines may give others
 * @param check what to look at before believing it
 * @param action what is done about it
 * @param sources where it stands
 */
public record Diagnosis(
        String sign, String stage, String probableCause, String check, String action, List<Source> sources) {
    public Diagnosis {
        sources = List.copyOf(sources);
    }
}
