package eggwright.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.sql.SQLException;
import org.sqlite.SQLiteException;

/** What the machine said, in plain words. */
final class Reasons {
    private Reasons() {}

    static String of(SQLException fault) {
        if (fault instanceof SQLiteException told) {
            return switch (told.getResultCode()) {
                case SQLITE_FULL -> "the disk is full";
                case SQLITE_READONLY,
                        SQLITE_READONLY_DIRECTORY,
                        SQLITE_READONLY_DBMOVED,
                        SQLITE_READONLY_CANTINIT,
                        SQLITE_READONLY_CANTLOCK,
                        SQLITE_READONLY_ROLLBACK,
                        SQLITE_READONLY_RECOVERY,
                        SQLITE_PERM -> "the book cannot be written: it is read-only, or was moved away";
                case SQLITE_IOERR, SQLITE_IOERR_WRITE, SQLITE_IOERR_FSYNC, SQLITE_IOERR_DIR_FSYNC ->
                    "the disk did not take it";
                case SQLITE_CORRUPT, SQLITE_NOTADB -> "the file is damaged";
                case SQLITE_CANTOPEN -> "the file cannot be opened";
                case SQLITE_BUSY -> "another program holds the book";
                default -> String.valueOf(told.getMessage());
            };
        }
        return String.valueOf(fault.getMessage());
    }

    static String of(IOException fault) {
        if (fault instanceof AccessDeniedException) {
            return "no leave";
        }
        if (fault instanceof FileSystemException told && told.getReason() != null) {
            return String.valueOf(told.getReason());
        }
        return String.valueOf(fault.getMessage());
    }
}
