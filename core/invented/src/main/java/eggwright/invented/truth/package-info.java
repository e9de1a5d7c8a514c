/** What is true of the invented farm before anybody counts, and the plain text in which it is written down. */
@NullMarked
package eggwright.invented.truth;

import org.jspecify.annotations.NullMarked;
