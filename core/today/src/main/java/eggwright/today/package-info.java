/** The day sheet: what is due, overdue and next. */
@NullMarked
package eggwright.today;

import org.jspecify.annotations.NullMarked;
