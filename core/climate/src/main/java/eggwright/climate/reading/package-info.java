/** Readings of sensors: dense, kept as they came, and never part of the book. */
@NullMarked
package eggwright.climate.reading;

import org.jspecify.annotations.NullMarked;
