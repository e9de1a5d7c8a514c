package eggwright.sheet.logger;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;

/**
 * Turns times as written, of one sensor, into instants. Times without an offset are the zone's; the hour that clocks go
 * through twice is told apart by the order of the rows: a time that is not after the last one read is of the second time
 * round, or of the first in a file that runs backwards. A time that clocks leapt over is none.
 */
final class FileClock {
    /** What a time comes to. */
    sealed interface Told {
        record At(long millis) implements Told {}

        /** Clocks leapt over it. */
        record LeaptOver() implements Told {}
    }

    /** Rows further apart say nothing of each other's hour. */
    private static final long NEAR_MILLIS = 3 * 3_600_000L;

    private final ZoneId zone;
    private final Running running;
    private LocalDate plainDay = LocalDate.MIN;
    private ZoneOffset plainOffset = ZoneOffset.UTC;
    private long last = Long.MIN_VALUE;

    /** Which way a file runs. */
    enum Running {
        FORWARDS,
        BACKWARDS
    }

    FileClock(ZoneId zone, Running running) {
        this.zone = zone;
        this.running = running;
    }

    Told tell(TimeForm.Written written) {
        if (written.offset().isPresent()) {
            return new Told.At(millis(written.local(), written.offset().get()));
        }
        if (isPlain(written.local().toLocalDate())) {
            return at(millis(written.local(), plainOffset));
        }
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(written.local());
        if (offsets.isEmpty()) {
            return new Told.LeaptOver();
        }
        long early = millis(written.local(), offsets.getFirst());
        long late = millis(written.local(), offsets.getLast());
        if (last == Long.MIN_VALUE || Math.abs(last - early) > NEAR_MILLIS) {
            return at(running == Running.FORWARDS ? early : late);
        }
        return switch (running) {
            case FORWARDS -> at(early <= last ? late : early);
            case BACKWARDS -> at(late >= last ? early : late);
        };
    }

    private Told at(long millis) {
        last = millis;
        return new Told.At(millis);
    }

    /** Whether clocks do not change on a day; remembered for the day, for a file has many times of one. */
    private boolean isPlain(LocalDate day) {
        if (day.equals(plainDay)) {
            return true;
        }
        var start = day.atStartOfDay(zone);
        var end = day.plusDays(1).atStartOfDay(zone);
        if (start.getOffset().equals(end.getOffset())) {
            plainDay = day;
            plainOffset = start.getOffset();
            return true;
        }
        return false;
    }

    private static long millis(LocalDateTime local, ZoneOffset offset) {
        return local.toInstant(offset).toEpochMilli();
    }
}
