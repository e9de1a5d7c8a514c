/** The book as a person reads it: every note, its trail, and what does not add up. */
@NullMarked
package eggwright.desk.ledger;

import org.jspecify.annotations.NullMarked;
