/** The farm at a glance: today, sets, egg room, pens, settings. */
@NullMarked
package eggwright.desk.farm;

import org.jspecify.annotations.NullMarked;
