package eggwright.desk.intake;

import eggwright.desk.part.TableShown;
import java.util.List;
import java.util.Optional;

/**
 * What was taken of a file.
 *
 * @param said sentences
 * @param held readings that are held back, the first of them; empty where none is
 * @param links to the machines that were read
 */
public record FileTakenPage(String name, List<String> said, Optional<TableShown> held, List<Link> links) {
    public FileTakenPage {
        said = List.copyOf(said);
        links = List.copyOf(links);
    }

    public record Link(String path, String label) {}
}
