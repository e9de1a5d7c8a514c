package eggwright.book.entry;

import eggwright.book.name.MachineName;
import eggwright.book.name.SectionName;
import eggwright.units.Humidity;
import eggwright.units.Temperature;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The thermometers of a machine, read by hand, and what was seen on the round.
 *
 * @param section absent where read for the whole machine
 * @param dry absent where not read
 * @param wet absent where not read
 * @param humidity absent where the machine has no hygrometer
 * @param inOrder what was looked at and found in order
 */
public record ClimateNoted(
        MachineName machine,
        @Nullable SectionName section,
        @Nullable Temperature dry,
        @Nullable Temperature wet,
        @Nullable Humidity humidity,
        List<RoundCheck> inOrder,
        String note)
        implements Payload {
    public ClimateNoted {
        inOrder = List.copyOf(inOrder);
        note = Checks.text("Note", note);
    }
}
