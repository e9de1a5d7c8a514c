package eggwright.intake.file;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Remembers as long as the desk is open; for a desk that is thrown away afterwards, and for tests. */
public final class ColumnsInMemory implements ColumnMemory {
    private final Map<String, String> kept = new ConcurrentHashMap<>();

    @Override
    public Optional<String> find(String name) {
        return Optional.ofNullable(kept.get(name));
    }

    @Override
    public void keep(String name, String value) {
        kept.put(name, value);
    }
}
