/** The book as the desk holds it: entries in the store, their picture in memory, what was worked out from it kept until the book changes. */
@NullMarked
package eggwright.desk.live;

import org.jspecify.annotations.NullMarked;
