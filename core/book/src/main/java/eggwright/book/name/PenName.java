package eggwright.book.name;

/** A breeding group kept together, or the name under which bought-in eggs are kept. */
public record PenName(String text) implements Name, Comparable<PenName> {
    public PenName {
        text = Name.check("pen", text);
    }

    /** By the numbers in the name where there are any, so that tray 9 comes before tray 10. */
    @Override
    public int compareTo(PenName other) {
        return NaturalOrder.compare(text, other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
