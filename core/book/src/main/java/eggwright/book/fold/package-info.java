/** The pure function from entries to the picture, and the ledger that keeps it up to date. */
@NullMarked
package eggwright.book.fold;

import org.jspecify.annotations.NullMarked;
