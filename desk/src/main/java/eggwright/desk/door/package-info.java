/** What a request has to pass before any page sees it, and the headers every answer carries. */
@NullMarked
package eggwright.desk.door;

import org.jspecify.annotations.NullMarked;
