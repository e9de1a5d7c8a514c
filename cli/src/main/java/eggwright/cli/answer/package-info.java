/** What a command answers, as JSON for programs or as a table for people. */
@NullMarked
package eggwright.cli.answer;

import org.jspecify.annotations.NullMarked;
