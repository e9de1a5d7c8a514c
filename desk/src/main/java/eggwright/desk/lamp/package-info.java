/** The lamp: the page that counts in the dark without signal, and what the desk tells and takes when it is in reach. */
@NullMarked
package eggwright.desk.lamp;

import org.jspecify.annotations.NullMarked;
