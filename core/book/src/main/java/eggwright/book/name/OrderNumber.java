package eggwright.book.name;

/** Chicks promised to one buyer for one day. */
public record OrderNumber(String text) implements Name, Comparable<OrderNumber> {
    public OrderNumber {
        text = Name.check("order", text);
    }

    /** By the numbers in the name where there are any, so that tray 9 comes before tray 10. */
    @Override
    public int compareTo(OrderNumber other) {
        return NaturalOrder.compare(text, other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
