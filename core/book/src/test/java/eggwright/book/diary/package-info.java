/** The diary of an invented farm, in which tests of the book, and of the rooms that read it, write their notes. */
@NullMarked
package eggwright.book.diary;

import org.jspecify.annotations.NullMarked;
