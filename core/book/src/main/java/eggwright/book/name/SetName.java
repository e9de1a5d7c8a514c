package eggwright.book.name;

/** The loads that go in together on one occasion. */
public record SetName(String text) implements Name, Comparable<SetName> {
    public SetName {
        text = Name.check("set", text);
    }

    /** By the numbers in the name where there are any, so that tray 9 comes before tray 10. */
    @Override
    public int compareTo(SetName other) {
        return NaturalOrder.compare(text, other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
