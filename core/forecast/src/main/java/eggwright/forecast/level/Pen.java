package eggwright.forecast.level;

import eggwright.book.name.PenName;
import eggwright.trade.Species;

/** The birds of one species in one pen. */
public record Pen(Species species, PenName name) {}
