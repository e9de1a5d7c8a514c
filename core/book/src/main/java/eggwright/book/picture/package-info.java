/** What the entries of a farm add up to: pens, egg room, machines, sets, orders, and what does not add up. */
@NullMarked
package eggwright.book.picture;

import org.jspecify.annotations.NullMarked;
