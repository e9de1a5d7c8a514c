/** The shell as a wall for water vapour: its conductance, measured, published or guessed, and what moves it. */
@NullMarked
package eggwright.egg.shell;

import org.jspecify.annotations.NullMarked;
