package eggwright.store;

import eggwright.book.store.Offered;
import eggwright.book.store.Outcome;
import eggwright.testkit.contracts.Notes;
import eggwright.wire.EntryCodec;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** A program that appends and says so, until somebody ends it. Run by {@link KillTest}. */
final class AppendsUntilKilled {
    private AppendsUntilKilled() {}

    public static void main(String[] arguments) {
        var received = Instant.parse("2027-04-13T12:00:00Z");
        int first = Integer.parseInt(arguments[1]);
        try (var store = DataFolder.at(Path.of(arguments[0])).write()) {
            for (int number = first; number < first + 100_000; number++) {
                var entry = Notes.remark(store.farm(), number, "Remark " + number);
                var offered = new Offered(entry, EntryCodec.write(entry), Duration.ZERO);
                if (store.append(offered, received.plus(number, ChronoUnit.SECONDS))
                        instanceof Outcome.Added(var kept)) {
                    System.out.println(kept.entry().id());
                    System.out.flush();
                }
            }
        }
    }
}
