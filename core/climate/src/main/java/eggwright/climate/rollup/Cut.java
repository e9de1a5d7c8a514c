package eggwright.climate.rollup;

import eggwright.units.OutOfRange;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;

/** How time is cut into stretches. */
public sealed interface Cut {
    Cut MINUTE = new Every(Duration.ofMinutes(1));
    Cut HOUR = new Every(Duration.ofHours(1));

    /** Equal stretches, counted from 1970 in UTC. */
    record Every(Duration length) implements Cut {
        public Every {
            if (length.toMillis() < 1) {
                throw new OutOfRange("A stretch of " + length + " is shorter than a millisecond");
            }
        }

        @Override
        public long startOf(long millis) {
            long step = length.toMillis();
            return Math.floorDiv(millis, step) * step;
        }

        @Override
        public long endOf(long start) {
            return start + length.toMillis();
        }
    }

    /** Days of the farm, of 23 or 25 hours where clocks change. */
    record Days(ZoneId zone) implements Cut {
        @Override
        public long startOf(long millis) {
            return Instant.ofEpochMilli(millis)
                    .atZone(zone)
                    .toLocalDate()
                    .atStartOfDay(zone)
                    .toInstant()
                    .toEpochMilli();
        }

        @Override
        public long endOf(long start) {
            return Instant.ofEpochMilli(start)
                    .atZone(zone)
                    .toLocalDate()
                    .plusDays(1)
                    .atStartOfDay(zone)
                    .toInstant()
                    .toEpochMilli();
        }
    }

    /** Where the stretch begins that holds an instant, in milliseconds since 1970. */
    long startOf(long millis);

    /** Where a stretch ends, given where it begins. */
    long endOf(long start);
}
