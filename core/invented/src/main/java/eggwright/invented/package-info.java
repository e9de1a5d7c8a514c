/** The invented farm: seasons with a known truth, for the demonstration, the tests, and the checks of what the analyses find. */
@NullMarked
package eggwright.invented;

import org.jspecify.annotations.NullMarked;
