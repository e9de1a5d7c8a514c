/** Symmetric positive matrices with few entries: Cholesky's factor, and the entries of the inverse in the same places. */
@NullMarked
package eggwright.stats.sparse;

import org.jspecify.annotations.NullMarked;
