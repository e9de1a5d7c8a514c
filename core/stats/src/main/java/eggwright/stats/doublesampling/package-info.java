/** What the opened eggs say about those that were only looked at. */
@NullMarked
package eggwright.stats.doublesampling;

import org.jspecify.annotations.NullMarked;
