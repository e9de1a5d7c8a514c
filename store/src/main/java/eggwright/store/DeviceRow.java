package eggwright.store;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A device that has joined, or on which the owner has signed in.
 *
 * @param device of its joining, never used again
 * @param name that entries carry
 * @param role owner, hand or looker
 * @param cameBy code or passphrase
 * @param tokenSha256 64 hex digits; the token itself is only on the device
 * @param ends when it is out by itself
 * @param letGo when somebody put it out; null while nobody has
 */
public record DeviceRow(
        String device,
        String name,
        String role,
        String cameBy,
        String tokenSha256,
        Instant joined,
        Instant seen,
        Instant ends,
        @Nullable Instant letGo) {}
