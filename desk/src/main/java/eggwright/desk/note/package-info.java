/** Forms for every kind of entry: opening, reading, keeping, mending. */
@NullMarked
package eggwright.desk.note;

import org.jspecify.annotations.NullMarked;
