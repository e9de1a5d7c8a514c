/** The pages by which devices come in, are listed and are put out, and by which the owner signs in. */
@NullMarked
package eggwright.desk.device;

import org.jspecify.annotations.NullMarked;
