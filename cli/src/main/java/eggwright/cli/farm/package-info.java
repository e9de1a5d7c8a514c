/** Commands on a farm's book. */
@NullMarked
package eggwright.cli.farm;

import org.jspecify.annotations.NullMarked;
