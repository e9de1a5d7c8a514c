/** Seeded random streams, one for each purpose, and the draws made from them. */
@NullMarked
package eggwright.invented.chance;

import org.jspecify.annotations.NullMarked;
