/** What a form shows: its fields, what was typed, and what is to be mended. */
@NullMarked
package eggwright.desk.form;

import org.jspecify.annotations.NullMarked;
