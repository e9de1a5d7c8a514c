/** The smallest value of a smooth function by its slope, and how it bends there. */
@NullMarked
package eggwright.stats.search;

import org.jspecify.annotations.NullMarked;
