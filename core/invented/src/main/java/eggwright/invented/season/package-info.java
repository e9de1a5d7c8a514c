/** Lets an invented season happen, from the first egg to the last pull, and writes it down as a keeper would. */
@NullMarked
package eggwright.invented.season;

import org.jspecify.annotations.NullMarked;
