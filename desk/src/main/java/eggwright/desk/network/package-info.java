/** The desk on the farm's own network: its fixed name, its authority and certificate, and how phones find it. */
@NullMarked
package eggwright.desk.network;

import org.jspecify.annotations.NullMarked;
