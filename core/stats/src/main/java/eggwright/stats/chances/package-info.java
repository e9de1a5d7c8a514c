/** Whether rates differ by more than luck. */
@NullMarked
package eggwright.stats.chances;

import org.jspecify.annotations.NullMarked;
