package eggwright.today.task;

import eggwright.book.name.SetName;
import java.util.List;

/**
 * Trays that were not candled on or about their day. Neither overdue nor a sign that nothing was lost: nobody looked.
 *
 * @param day on which they would have been candled
 * @param trays in natural order
 */
public record NotLooked(SetName set, int day, Where where, List<TrayCount> trays) {
    public NotLooked {
        trays = List.copyOf(trays);
    }
}
