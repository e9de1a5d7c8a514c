/** Files of loggers: columns found by looking, times read in the farm's zone, readings handed on one by one. */
@NullMarked
package eggwright.sheet.logger;

import org.jspecify.annotations.NullMarked;
