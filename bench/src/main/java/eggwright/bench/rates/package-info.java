/** How long reports take. */
@NullMarked
package eggwright.bench.rates;

import org.jspecify.annotations.NullMarked;
