/** The people at the lamp: what opened eggs tell of each one's looks. */
@NullMarked
package eggwright.desk.candler;

import org.jspecify.annotations.NullMarked;
