/** Who has joined the desk from elsewhere, and how: codes, tokens, the owner's passphrase, and how often any may be tried. */
@NullMarked
package eggwright.desk.joining;

import org.jspecify.annotations.NullMarked;
