/** What the counts say: accounts as bars, rates with their intervals, groups against the farm's own normal, losses by stage. */
@NullMarked
package eggwright.desk.rate;

import org.jspecify.annotations.NullMarked;
