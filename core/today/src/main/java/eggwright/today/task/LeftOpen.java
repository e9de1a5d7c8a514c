package eggwright.today.task;

import eggwright.book.name.SetName;
import java.time.LocalDate;

/**
 * A set whose hatch is long over although the book still holds eggs of it in a machine: its end was never noted.
 *
 * @param takeOff the day on which it should have been taken off
 */
public record LeftOpen(SetName set, LocalDate takeOff) {}
