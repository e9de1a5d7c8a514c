/** The book on SQLite: append, read, back up, restore, verify. */
@NullMarked
package eggwright.store;

import org.jspecify.annotations.NullMarked;
