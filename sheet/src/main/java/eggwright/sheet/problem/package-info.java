/** What is wrong with a spreadsheet: where, and what would be right. */
@NullMarked
package eggwright.sheet.problem;

import org.jspecify.annotations.NullMarked;
