/** Style, script, icons and the typeface, served under a name that holds the hash of their content. */
@NullMarked
package eggwright.desk.assets;

import org.jspecify.annotations.NullMarked;
