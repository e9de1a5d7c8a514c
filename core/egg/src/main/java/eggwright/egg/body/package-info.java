/** The egg as a body: mass, volume, surface and density from its length and breadth, its shell, its time to hatch. */
@NullMarked
package eggwright.egg.body;

import org.jspecify.annotations.NullMarked;
