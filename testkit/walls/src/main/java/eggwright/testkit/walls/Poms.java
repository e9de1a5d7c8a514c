package eggwright.testkit.walls;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.xml.sax.SAXException;

/** Reads rooms from poms, as written: no plugin, profile or property is looked at. */
public final class Poms {
    private static final String OURS = "eggwright";

    private Poms() {}

    /** Every room under the pom in a folder: the modules it lists, and theirs. */
    public static List<Room> under(Path folder) {
        var project = project(folder.resolve("pom.xml"));
        var modules = child(project, "modules").stream()
                .flatMap(list -> children(list, "module"))
                .map(module -> module.getTextContent().strip())
                .toList();
        if (modules.isEmpty()) {
            return text(project, "packaging").filter("pom"::equals).isPresent() ? List.of() : List.of(room(project));
        }
        var rooms = new ArrayList<Room>();
        for (var module : modules) {
            rooms.addAll(under(folder.resolve(module)));
        }
        return rooms;
    }

    /** The room of one pom. */
    public static Room read(Path pom) {
        return room(project(pom));
    }

    private static Room room(Element project) {
        var uses = new HashSet<String>();
        var libraries = new HashSet<String>();
        child(project, "dependencies").stream()
                .flatMap(list -> children(list, "dependency"))
                .filter(each -> text(each, "scope").filter("test"::equals).isEmpty())
                .forEach(each -> {
                    var group = text(each, "groupId").orElse("");
                    var artifact = text(each, "artifactId").orElse("");
                    if (group.equals(OURS)) {
                        uses.add(name(artifact));
                    } else {
                        libraries.add(group + ":" + artifact);
                    }
                });
        var inCore = child(project, "parent")
                .flatMap(parent -> text(parent, "artifactId"))
                .filter("eggwright-core"::equals)
                .isPresent();
        return new Room(
                name(text(project, "artifactId").orElse("")),
                inCore ? Room.Place.CORE : Room.Place.EDGE,
                uses,
                libraries);
    }

    private static String name(String artifact) {
        return artifact.startsWith(OURS + "-") ? artifact.substring(OURS.length() + 1) : artifact;
    }

    private static Element project(Path pom) {
        try {
            var factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder().parse(pom.toFile()).getDocumentElement();
        } catch (IOException unread) {
            throw new UncheckedIOException(pom + " could not be read", unread);
        } catch (SAXException | ParserConfigurationException unread) {
            throw new IllegalArgumentException(pom + " is not a pom", unread);
        }
    }

    private static Optional<Element> child(Element parent, String name) {
        return children(parent, name).findFirst();
    }

    private static Optional<String> text(Element parent, String name) {
        return child(parent, name).map(each -> each.getTextContent().strip());
    }

    private static Stream<Element> children(Element parent, String name) {
        var nodes = parent.getChildNodes();
        return IntStream.range(0, nodes.getLength())
                .mapToObj(nodes::item)
                .filter(Element.class::isInstance)
                .map(Element.class::cast)
                .filter(each -> each.getTagName().equals(name));
    }
}
