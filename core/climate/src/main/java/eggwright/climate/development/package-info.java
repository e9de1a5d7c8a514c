/** How far embryos have come: a clock that runs with the warmth of the egg, and when it strikes. */
@NullMarked
package eggwright.climate.development;

import org.jspecify.annotations.NullMarked;
