package eggwright.intake.file;

import java.util.Optional;

/** Where is remembered what columns hold, and which files were taken. */
public interface ColumnMemory {
    Optional<String> find(String name);

    /** Keeps a value in the place of the one before. */
    void keep(String name, String value);
}
