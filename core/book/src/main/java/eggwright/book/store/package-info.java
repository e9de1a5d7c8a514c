/** What the book needs of a store of entries. */
@NullMarked
package eggwright.book.store;

import org.jspecify.annotations.NullMarked;
