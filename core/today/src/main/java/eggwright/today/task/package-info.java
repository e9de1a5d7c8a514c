/** One piece of work: what, when, where, on which eggs, why, and where it is noted when done. */
@NullMarked
package eggwright.today.task;

import org.jspecify.annotations.NullMarked;
