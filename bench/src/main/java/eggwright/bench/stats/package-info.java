/** How long the statistics take. */
@NullMarked
package eggwright.bench.stats;

import org.jspecify.annotations.NullMarked;
