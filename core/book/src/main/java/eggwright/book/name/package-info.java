/** The names people give: pens, machines, trays, sets, buyers, and the ids of entries. */
@NullMarked
package eggwright.book.name;

import org.jspecify.annotations.NullMarked;
