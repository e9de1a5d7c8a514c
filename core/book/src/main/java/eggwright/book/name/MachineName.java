package eggwright.book.name;

/** A setter or a hatcher. */
public record MachineName(String text) implements Name, Comparable<MachineName> {
    public MachineName {
        text = Name.check("machine", text);
    }

    /** By the numbers in the name where there are any, so that tray 9 comes before tray 10. */
    @Override
    public int compareTo(MachineName other) {
        return NaturalOrder.compare(text, other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
