/** Today: what to do now, what is coming, what was not noted, and what waits in the egg room. */
@NullMarked
package eggwright.desk.today;

import org.jspecify.annotations.NullMarked;
