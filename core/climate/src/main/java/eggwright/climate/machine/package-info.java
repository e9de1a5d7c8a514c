/** One machine as it is now: its air, the sets in it by age, when they will hatch, and what to run it at. */
@NullMarked
package eggwright.climate.machine;

import org.jspecify.annotations.NullMarked;
