/** The account of one set, load or pen, line by line, beside what was to be expected; and when its dead died. */
@NullMarked
package eggwright.rates.account;

import org.jspecify.annotations.NullMarked;
