/** Pictures drawn on the server as SVG, each with a sentence and a table of its numbers. */
@NullMarked
package eggwright.desk.picture;

import org.jspecify.annotations.NullMarked;
