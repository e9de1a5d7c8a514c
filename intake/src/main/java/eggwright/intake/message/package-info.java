/** What a sensor sends: read, judged, kept or complained of. */
@NullMarked
package eggwright.intake.message;

import org.jspecify.annotations.NullMarked;
