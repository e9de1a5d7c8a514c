/** The texts of the pages, kept in one messages.properties beside each feature. */
@NullMarked
package eggwright.desk.words;

import org.jspecify.annotations.NullMarked;
