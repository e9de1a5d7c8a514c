/** The trade's table of signs, probable causes, checks and actions. */
@NullMarked
package eggwright.trade.cause;

import org.jspecify.annotations.NullMarked;
