/** How readings come in, as pages: sensors and their tokens, the broker, the watched folder, a logger’s file brought by hand. */
@NullMarked
package eggwright.desk.intake;

import org.jspecify.annotations.NullMarked;
