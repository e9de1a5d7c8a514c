/** Tables out of spreadsheet files, and into them. */
@NullMarked
package eggwright.sheet.table;

import org.jspecify.annotations.NullMarked;
