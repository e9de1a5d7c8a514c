/** The command line: Main, where everything is wired, and what all commands share. */
@NullMarked
package eggwright.cli;

import org.jspecify.annotations.NullMarked;
