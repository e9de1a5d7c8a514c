/** Who asks something of the desk, and who may. */
@NullMarked
package eggwright.desk.who;

import org.jspecify.annotations.NullMarked;
