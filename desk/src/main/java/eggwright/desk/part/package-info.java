/** Small pieces that many pages show: rates, cautions, notices, empty places. */
@NullMarked
package eggwright.desk.part;

import org.jspecify.annotations.NullMarked;
