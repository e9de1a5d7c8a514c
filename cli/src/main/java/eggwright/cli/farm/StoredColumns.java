package eggwright.cli.farm;

import eggwright.intake.file.ColumnMemory;
import eggwright.store.SettingStore;
import java.util.Optional;

/** What is known of loggers' files, among the settings of the book. */
record StoredColumns(SettingStore settings) implements ColumnMemory {
    @Override
    public Optional<String> find(String name) {
        return settings.find(name);
    }

    @Override
    public void keep(String name, String value) {
        settings.keep(name, value);
    }
}
