package eggwright.book.name;

/** Who noted an entry. */
public record PersonName(String text) implements Name, Comparable<PersonName> {
    public PersonName {
        text = Name.check("person", text);
    }

    /** By the numbers in the name where there are any, so that tray 9 comes before tray 10. */
    @Override
    public int compareTo(PersonName other) {
        return NaturalOrder.compare(text, other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
