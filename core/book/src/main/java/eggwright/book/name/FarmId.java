package eggwright.book.name;

/** Which farm a book belongs to. */
public record FarmId(String text) implements Name, Comparable<FarmId> {
    public FarmId {
        text = Name.check("farm", text);
    }

    /** By the numbers in the name where there are any, so that tray 9 comes before tray 10. */
    @Override
    public int compareTo(FarmId other) {
        return NaturalOrder.compare(text, other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
