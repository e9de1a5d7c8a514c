/** Bad nights: when a machine left its band, what the eggs felt, how late they are, and what it may have cost. */
@NullMarked
package eggwright.climate.excursion;

import org.jspecify.annotations.NullMarked;
