package eggwright.book.name;

/** A hatcher basket, in which many loads may share. */
public record BasketName(String text) implements Name, Comparable<BasketName> {
    public BasketName {
        text = Name.check("basket", text);
    }

    /** By the numbers in the name where there are any, so that tray 9 comes before tray 10. */
    @Override
    public int compareTo(BasketName other) {
        return NaturalOrder.compare(text, other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
