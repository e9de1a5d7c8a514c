/** How far a share seen in so many may lie from the share that made it. */
@NullMarked
package eggwright.stats.interval;

import org.jspecify.annotations.NullMarked;
