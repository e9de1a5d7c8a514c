package eggwright.planted.clock;

import java.time.Instant;
import java.time.InstantSource;

final class ReadsTheClock {
    Instant breach() {
        return Instant.now();
    }

    Instant fine(InstantSource source) {
        return source.instant();
    }
}
