/** Entries as JSON and back again. */
@NullMarked
package eggwright.wire;

import org.jspecify.annotations.NullMarked;
