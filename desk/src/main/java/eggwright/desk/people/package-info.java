/** The people behind buyer numbers: listed, added, changed, erased. */
@NullMarked
package eggwright.desk.people;

import org.jspecify.annotations.NullMarked;
