/** Measures the book: folding it, adding to it. */
@NullMarked
package eggwright.bench.book;

import org.jspecify.annotations.NullMarked;
