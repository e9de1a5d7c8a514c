/** Where a value comes from, and the register of what was read. */
@NullMarked
package eggwright.trade.source;

import org.jspecify.annotations.NullMarked;
