/** A real browser for tests of pages. */
@NullMarked
package eggwright.desk.browser;

import org.jspecify.annotations.NullMarked;
