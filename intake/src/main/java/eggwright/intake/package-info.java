/** All ways by which readings come in, together, as a desk shows them. */
@NullMarked
package eggwright.intake;

import org.jspecify.annotations.NullMarked;
