/** Reads the tables that lie inside the program; knows nothing of what stands in them. */
@NullMarked
package eggwright.trade.table;

import org.jspecify.annotations.NullMarked;
