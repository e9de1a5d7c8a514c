/** How far two looks at the same eggs agree, and how often one look is right where the truth is known. */
@NullMarked
package eggwright.stats.agreement;

import org.jspecify.annotations.NullMarked;
