/** What every store of the book promises, as tests that each store runs; and a store that only remembers. */
@NullMarked
package eggwright.testkit.contracts;

import org.jspecify.annotations.NullMarked;
