/** The round at the lamp: which trays can be candled, in which order, and what may be judged today. */
@NullMarked
package eggwright.today.lamp;

import org.jspecify.annotations.NullMarked;
