/** From a label on a tray, or a card of a load, to its page: the addresses and the codes that carry them. */
@NullMarked
package eggwright.desk.link;

import org.jspecify.annotations.NullMarked;
