/** What pages cost. */
@NullMarked
package eggwright.bench.desk;

import org.jspecify.annotations.NullMarked;
