/** A page that shows every piece of the desk, for looking at; only in the tests. */
@NullMarked
package eggwright.desk.pattern;

import org.jspecify.annotations.NullMarked;
