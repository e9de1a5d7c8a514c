/** What a person saw or did: entries and their payloads, one record for each kind. */
@NullMarked
package eggwright.book.entry;

import org.jspecify.annotations.NullMarked;
