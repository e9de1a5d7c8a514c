package eggwright.testkit.contracts;

import eggwright.book.entry.Kept;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.store.EntryStore;
import eggwright.book.store.Offered;
import eggwright.book.store.Outcome;
import eggwright.book.store.Refusal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;

/** A book that lives as long as the program. Keeps every promise of a store but that of outliving it. */
public final class MemoryEntryStore implements EntryStore {
    private record Line(Kept kept, String written) {}

    private final FarmId farm;
    private final List<Line> lines = new ArrayList<>();
    private final Map<EntryId, Kept> byId = new HashMap<>();

    public MemoryEntryStore(FarmId farm) {
        this.farm = farm;
    }

    @Override
    public FarmId farm() {
        return farm;
    }

    @Override
    public Outcome append(Offered offered, Instant received) {
        return switch (appendAll(List.of(offered), received)) {
            case Batch.AllKept(var outcomes) -> outcomes.getFirst();
            case Batch.NoneKept(var why) -> new Outcome.Refused(why.getFirst());
        };
    }

    @Override
    public synchronized Batch appendAll(List<Offered> offered, Instant received) {
        var outcomes = new ArrayList<Outcome>();
        var refusals = new ArrayList<Refusal>();
        int before = lines.size();
        for (var one : offered) {
            switch (offer(one, received)) {
                case Outcome.Refused(var why) -> refusals.add(why);
                case Outcome outcome -> outcomes.add(outcome);
            }
        }
        if (refusals.isEmpty()) {
            return new Batch.AllKept(List.copyOf(outcomes));
        }
        while (lines.size() > before) {
            byId.remove(lines.removeLast().kept().entry().id());
        }
        return new Batch.NoneKept(List.copyOf(refusals));
    }

    private Outcome offer(Offered offered, Instant received) {
        var entry = offered.entry();
        if (!entry.farm().equals(farm)) {
            return new Outcome.Refused(new Refusal.OtherFarm(farm, entry.farm()));
        }
        var known = byId.get(entry.id());
        if (known != null) {
            return known.entry().isSameAs(entry)
                    ? new Outcome.KeptBefore(known)
                    : new Outcome.Refused(new Refusal.OtherContent(known.entry(), entry));
        }
        var kept = new Kept(entry, received, offered.clockOffset());
        byId.put(entry.id(), kept);
        lines.add(new Line(kept, offered.written()));
        return new Outcome.Added(kept);
    }

    @Override
    public List<Kept> all() {
        return after(0);
    }

    @Override
    public synchronized List<Kept> after(long count) {
        return lines.stream().skip(count).map(Line::kept).toList();
    }

    @Override
    public synchronized long count() {
        return lines.size();
    }

    @Override
    public void eachWritten(BiConsumer<Kept, String> reader) {
        List<Line> now;
        synchronized (this) {
            now = List.copyOf(lines);
        }
        now.forEach(line -> reader.accept(line.kept(), line.written()));
    }

    @Override
    public void close() {
        // Nothing is held open.
    }
}
