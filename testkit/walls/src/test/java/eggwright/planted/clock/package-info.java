/** A breach planted on purpose, to see that it is caught (or a clean room, to see that it passes). */
@NullMarked
package eggwright.planted.clock;

import org.jspecify.annotations.NullMarked;
