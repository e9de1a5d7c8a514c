/** A folder whose new and grown files are taken by themselves. */
@NullMarked
package eggwright.intake.folder;

import org.jspecify.annotations.NullMarked;
