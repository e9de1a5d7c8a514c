package eggwright.book.name;

/** A shelf or level of a setter that holds trays. */
public record SectionName(String text) implements Name, Comparable<SectionName> {
    public SectionName {
        text = Name.check("section", text);
    }

    /** By the numbers in the name where there are any, so that tray 9 comes before tray 10. */
    @Override
    public int compareTo(SectionName other) {
        return NaturalOrder.compare(text, other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
