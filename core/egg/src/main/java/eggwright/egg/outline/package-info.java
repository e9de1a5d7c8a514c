/** The outline of an egg, and the volume and surface of the body that it turns. */
@NullMarked
package eggwright.egg.outline;

import org.jspecify.annotations.NullMarked;
