package eggwright.book.name;

/** Which phone or desk an entry was noted on. */
public record DeviceName(String text) implements Name, Comparable<DeviceName> {
    public DeviceName {
        text = Name.check("device", text);
    }

    /** By the numbers in the name where there are any, so that tray 9 comes before tray 10. */
    @Override
    public int compareTo(DeviceName other) {
        return NaturalOrder.compare(text, other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
