/** Quantities and their conversions. Every room may use this one; it uses none. */
@NullMarked
package eggwright.units;

import org.jspecify.annotations.NullMarked;
