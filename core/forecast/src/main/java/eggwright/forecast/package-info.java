/** Chicks to come: whole-chick distributions for each set, and how sure. */
@NullMarked
package eggwright.forecast;

import org.jspecify.annotations.NullMarked;
