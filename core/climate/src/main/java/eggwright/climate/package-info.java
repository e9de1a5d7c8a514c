/** What machines read by themselves, what eggs lost and lived through, and what follows for dial and calendar. */
@NullMarked
package eggwright.climate;

import org.jspecify.annotations.NullMarked;
