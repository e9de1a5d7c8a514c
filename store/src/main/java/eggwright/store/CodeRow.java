package eggwright.store;

import java.time.Instant;

/**
 * A code by which one device may join.
 *
 * @param codeSha256 64 hex digits; the code itself was only shown
 * @param role that the device will have
 */
public record CodeRow(String codeSha256, String role, Instant made, Instant ends) {}
