package eggwright.invented.season;

import eggwright.book.entry.Kept;
import eggwright.book.name.FarmId;
import eggwright.invented.answer.Answers;
import eggwright.invented.truth.Truth;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/**
 * One invented season: what the keepers noted, and what really happened.
 *
 * @param from the day of the first egg
 * @param entries in the order in which the desk received them
 * @param answers of the whole season, also where {@code entries} end earlier
 */
public record InventedSeason(Truth truth, long seed, LocalDate from, List<Kept> entries, Answers answers) {
    public InventedSeason {
        entries = List.copyOf(entries);
    }

    public FarmId farm() {
        return new FarmId(truth.farm().name());
    }

    /** The same season as the desk knew it at an instant. */
    public InventedSeason until(Instant instant) {
        return new InventedSeason(
                truth,
                seed,
                from,
                entries.stream().filter(k -> !k.received().isAfter(instant)).toList(),
                answers);
    }
}
