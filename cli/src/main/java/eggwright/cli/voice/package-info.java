/** How the program speaks in a terminal, the same in every command: options, messages, exit statuses. */
@NullMarked
package eggwright.cli.voice;

import org.jspecify.annotations.NullMarked;
