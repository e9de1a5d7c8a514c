package eggwright.rates.candler;

import eggwright.book.name.PersonName;

/**
 * One person at the lamp.
 *
 * @param who noted the looks
 * @param looks looks noted
 */
public record Candler(PersonName who, int looks, FalseClears falseClears, MissedClears missedClears) {}
