package eggwright.store;

import eggwright.book.name.BuyerNumber;

/**
 * Who is behind a buyer number.
 *
 * @param note such as a telephone number; may be empty
 */
public record Buyer(BuyerNumber number, String name, String address, String note) {}
