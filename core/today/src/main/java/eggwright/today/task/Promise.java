package eggwright.today.task;

import eggwright.book.name.BuyerNumber;
import eggwright.book.name.OrderNumber;
import eggwright.trade.Species;
import java.time.LocalDate;

/**
 * Chicks that a buyer still has to get.
 *
 * @param chicks still owed, at least 1
 */
public record Promise(OrderNumber order, BuyerNumber buyer, Species species, int chicks, LocalDate day) {}
