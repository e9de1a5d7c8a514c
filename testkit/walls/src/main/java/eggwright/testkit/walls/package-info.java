/** Checks that a room keeps to its walls. Used by tests only. */
@NullMarked
package eggwright.testkit.walls;

import org.jspecify.annotations.NullMarked;
