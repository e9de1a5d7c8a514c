package eggwright.sheet.logger;

import eggwright.sheet.problem.Problem;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The rows of a file, one by one, so that a file of any length takes no more memory than a row. */
interface LoggerRows extends AutoCloseable {
    /**
     * One row.
     *
     * @param number as a spreadsheet numbers it
     * @param cells trimmed
     */
    record Row(int number, List<String> cells) {}

    /** The next row; absent at the end, and where the file could not be read further. */
    @Nullable Row next();

    /** Why the file could not be read further; absent where it could. */
    @Nullable Problem fault();

    @Override
    void close();
}
