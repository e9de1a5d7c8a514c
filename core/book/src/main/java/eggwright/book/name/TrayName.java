package eggwright.book.name;

/** The physical thing with a number on it, used again every week. */
public record TrayName(String text) implements Name, Comparable<TrayName> {
    public TrayName {
        text = Name.check("tray", text);
    }

    /** By the numbers in the name where there are any, so that tray 9 comes before tray 10. */
    @Override
    public int compareTo(TrayName other) {
        return NaturalOrder.compare(text, other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
