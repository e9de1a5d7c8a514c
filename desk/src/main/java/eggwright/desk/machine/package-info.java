/** The machines: what stands where, what they were read at, how clean they are. */
@NullMarked
package eggwright.desk.machine;

import org.jspecify.annotations.NullMarked;
