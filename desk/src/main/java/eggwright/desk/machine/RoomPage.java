package eggwright.desk.machine;

import eggwright.desk.machine.OneMachinePage.Figure;
import eggwright.desk.machine.OneMachinePage.Link;
import eggwright.desk.part.CautionShown;
import java.util.List;

/**
 * A room with sensors that is no machine: the egg room, the brooder.
 *
 * @param headline how it stands
 * @param said what belongs to it, a sentence each
 * @param figures its air, as last read
 */
public record RoomPage(
        eggwright.desk.Place here,
        String name,
        String headline,
        List<String> said,
        List<Link> links,
        List<Figure> figures,
        ReadingsShown readings,
        List<CautionShown> cautions) {
    public RoomPage {
        said = List.copyOf(said);
        links = List.copyOf(links);
        figures = List.copyOf(figures);
        cautions = List.copyOf(cautions);
    }
}
