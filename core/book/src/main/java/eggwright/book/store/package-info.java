/** What the book needs of a store: of entries, and of the buyers behind their numbers. */
@NullMarked
package eggwright.book.store;

import org.jspecify.annotations.NullMarked;
