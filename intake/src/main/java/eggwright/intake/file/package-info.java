/** Loggers’ files on their way into the readings: looked at, taken whole or not at all, their columns remembered. */
@NullMarked
package eggwright.intake.file;

import org.jspecify.annotations.NullMarked;
