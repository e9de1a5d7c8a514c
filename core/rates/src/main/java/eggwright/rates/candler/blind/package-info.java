/** How far two people agree who looked at the same tray, the second without knowing what the first saw. */
@NullMarked
package eggwright.rates.candler.blind;

import org.jspecify.annotations.NullMarked;
