/** Water lost through the shell: from weighings to the humidity that lands an egg at a wanted loss. */
@NullMarked
package eggwright.egg.loss;

import org.jspecify.annotations.NullMarked;
