package eggwright.testkit.walls;

import java.util.Set;

/**
 * One room as its pom draws it.
 *
 * @param name the last word of its artifact, as in {@code eggwright-book}
 * @param place in the core, which may use no edge library, or at the edge
 * @param uses rooms that its shipped code may import; test scope is left out
 * @param libraries libraries that its shipped code may import, as {@code group:artifact}
 */
public record Room(String name, Place place, Set<String> uses, Set<String> libraries) {
    /** Where a room lies. */
    public enum Place {
        /** Its pom is a child of the core's. */
        CORE,
        /** Anything else. */
        EDGE
    }

    /** Copies the sets. */
    public Room {
        uses = Set.copyOf(uses);
        libraries = Set.copyOf(libraries);
    }
}
