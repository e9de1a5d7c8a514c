package eggwright.invented.truth;

/**
 * What is promised to buyers.
 *
 * @param perWeek orders a week on average
 * @param fewest chicks of an order
 * @param most chicks of an order
 * @param buyers how many buyers there are
 */
public record OrderTruth(double perWeek, int fewest, int most, int buyers) {
    public static final OrderTruth PLAIN = new OrderTruth(1.4, 40, 220, 6);

    public OrderTruth {
        Within.range("per_week", perWeek, 0, 50);
        Within.range("fewest", fewest, 1, 100_000);
        Within.range("most", most, fewest, 100_000);
        Within.range("buyers", buyers, 1, 1000);
    }
}
