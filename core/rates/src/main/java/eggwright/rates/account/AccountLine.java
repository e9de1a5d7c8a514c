package eggwright.rates.account;

import eggwright.book.picture.Fate;

/** So many eggs with one fate. */
public record AccountLine(Fate fate, int eggs) {}
