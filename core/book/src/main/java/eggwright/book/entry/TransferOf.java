package eggwright.book.entry;

import eggwright.book.name.BasketName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import org.jspecify.annotations.Nullable;

/**
 * One load, or part of it, going into one basket.
 *
 * @param eggs absent where the whole load went and was not counted
 * @param basket absent where baskets are not told apart
 */
public record TransferOf(
        SetName set,
        TrayName tray,
        @Nullable Integer eggs,
        @Nullable BasketName basket) {
    public TransferOf {
        if (eggs != null) {
            Checks.count("Transferred", eggs);
        }
    }
}
