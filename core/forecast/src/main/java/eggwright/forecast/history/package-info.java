/** What each set showed on its way: so many of so many came through a stage. */
@NullMarked
package eggwright.forecast.history;

import org.jspecify.annotations.NullMarked;
