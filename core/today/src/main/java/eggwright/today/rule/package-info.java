/** The rules that say which work falls due and when it counts as done. */
@NullMarked
package eggwright.today.rule;

import org.jspecify.annotations.NullMarked;
