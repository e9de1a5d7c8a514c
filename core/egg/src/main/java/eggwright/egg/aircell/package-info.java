/** The air cell: its volume from the water lost, and what its depth does and does not tell. */
@NullMarked
package eggwright.egg.aircell;

import org.jspecify.annotations.NullMarked;
