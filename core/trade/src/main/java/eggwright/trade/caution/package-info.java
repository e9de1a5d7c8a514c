/** Short cautions by place of work, each with the authority to defer to. */
@NullMarked
package eggwright.trade.caution;

import org.jspecify.annotations.NullMarked;
