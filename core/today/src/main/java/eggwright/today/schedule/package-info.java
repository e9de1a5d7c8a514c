/** The dates of a set by the species in it, the farm's own figures and habits laid over the trade's. */
@NullMarked
package eggwright.today.schedule;

import org.jspecify.annotations.NullMarked;
