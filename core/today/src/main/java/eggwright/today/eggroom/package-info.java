/** Eggs that wait in the egg room: how old they are, what the advice says, and which to set first. */
@NullMarked
package eggwright.today.eggroom;

import org.jspecify.annotations.NullMarked;
