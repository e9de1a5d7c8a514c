package eggwright.today.task;

import eggwright.book.name.TrayName;
import org.jspecify.annotations.Nullable;

/**
 * A tray, and how many eggs it should hold.
 *
 * @param eggs absent where its eggs were last counted together with those of other trays
 */
public record TrayCount(TrayName tray, @Nullable Integer eggs) {}
