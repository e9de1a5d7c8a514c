package eggwright.desk.note;

import java.util.List;

/** All forms, by shelf. */
public record NoteList(List<Group> groups) {
    public NoteList {
        groups = List.copyOf(groups);
    }

    /** One shelf of forms. */
    public record Group(String title, List<Link> links) {
        public Group {
            links = List.copyOf(links);
        }
    }

    /**
     * One form.
     *
     * @param label what a person did, as "Eggs gathered"
     */
    public record Link(String path, String label) {}
}
