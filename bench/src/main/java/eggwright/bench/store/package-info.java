/** How long appends take. */
@NullMarked
package eggwright.bench.store;

import org.jspecify.annotations.NullMarked;
