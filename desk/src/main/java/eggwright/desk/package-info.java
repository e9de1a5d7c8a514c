/** The desk: starts and stops the server, frames every page, and lets each feature add its own. */
@NullMarked
package eggwright.desk;

import org.jspecify.annotations.NullMarked;
