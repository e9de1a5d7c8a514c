package eggwright.book.entry;

import eggwright.book.name.BuyerNumber;
import eggwright.book.name.OrderNumber;
import eggwright.trade.Species;
import java.time.LocalDate;

/** Chicks were promised. */
public record ChicksOrdered(
        OrderNumber order, BuyerNumber buyer, Species species, int chicks, LocalDate day, String note)
        implements Payload {
    public ChicksOrdered {
        Checks.count("Chicks", chicks);
        Checks.year("Day", day);
        note = Checks.text("Note", note);
    }
}
