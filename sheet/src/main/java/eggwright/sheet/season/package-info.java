/** The season file: one row for each tray of a season, read into entries. */
@NullMarked
package eggwright.sheet.season;

import org.jspecify.annotations.NullMarked;
