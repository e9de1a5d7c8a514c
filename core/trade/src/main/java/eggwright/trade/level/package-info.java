/** Published levels of fertility, hatch and loss, to compare a farm's own with. */
@NullMarked
package eggwright.trade.level;

import org.jspecify.annotations.NullMarked;
