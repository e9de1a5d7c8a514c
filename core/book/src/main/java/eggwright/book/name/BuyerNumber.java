package eggwright.book.name;

/** A random number that stands for a buyer; name and address live in a table that can be erased. */
public record BuyerNumber(String text) implements Name, Comparable<BuyerNumber> {
    public BuyerNumber {
        text = Name.check("buyer", text);
    }

    /** By the numbers in the name where there are any, so that tray 9 comes before tray 10. */
    @Override
    public int compareTo(BuyerNumber other) {
        return NaturalOrder.compare(text, other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
