/** The sensors of one place: what is held back, what each is corrected by, and which of them to look at. */
@NullMarked
package eggwright.climate.care;

import org.jspecify.annotations.NullMarked;
