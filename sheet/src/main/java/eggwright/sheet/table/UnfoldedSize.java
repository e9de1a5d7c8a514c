package eggwright.sheet.table;

import java.io.IOException;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/** Whether a workbook unfolds to a size that can be held. A small file can unfold into a very large one. */
enum UnfoldedSize {
    FITTING,
    /** The same, of a workbook without styles, which the standard allows: no cell of it is a date. */
    FITTING_WITHOUT_STYLES,
    TOO_LARGE;

    /** Cell names have at most three letters (XFD); a longer one would make the reader lay out millions of cells. */
    private static final int MOST_LETTERS = 3;

    private static final int BEFORE_LETTERS = 4;

    /** Throws an {@link IOException} where the archive is damaged, or names cells that no sheet has. */
    static UnfoldedSize of(byte[] bytes, long most) throws IOException {
        long all = 0;
        var found = FITTING_WITHOUT_STYLES;
        var buffer = new byte[1 << 16];
        // By the directory at its end, as the reader goes: streams of some writers can be read in no other way.
        try (var zip = ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes))
                .get()) {
            for (var entries = zip.getEntries(); entries.hasMoreElements(); ) {
                var entry = entries.nextElement();
                var sheet = entry.getName().contains("sheet") && entry.getName().endsWith(".xml");
                if (entry.getName().endsWith("styles.xml")) {
                    found = FITTING;
                }
                int state = 0;
                try (var in = zip.getInputStream(entry)) {
                    for (int n = in.read(buffer); n > 0; n = in.read(buffer)) {
                        all += n;
                        if (all > most) {
                            return TOO_LARGE;
                        }
                        if (sheet) {
                            state = scan(buffer, n, state);
                        }
                    }
                }
            }
        }
        return found;
    }

    /**
     * Looks for {@code  r="ABCD}; the state is how much of it has been seen. The space before it tells a cell's name from
     * other names that end in r.
     */
    private static int scan(byte[] buffer, int n, int from) throws IOException {
        int state = from;
        for (int i = 0; i < n; i++) {
            int c = buffer[i];
            if (state >= BEFORE_LETTERS && ((c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'))) {
                if (++state > BEFORE_LETTERS + MOST_LETTERS) {
                    throw new IOException("a cell whose name has more than " + MOST_LETTERS + " letters");
                }
            } else {
                state = next(state, c);
            }
        }
        return state;
    }

    private static int next(int state, int c) {
        return switch (c) {
            case ' ', '\t', '\n', '\r' -> 1;
            case 'r' -> state == 1 ? 2 : 0;
            case '=' -> state == 2 ? 3 : 0;
            case '"', '\'' -> state == 3 ? BEFORE_LETTERS : 0;
            default -> 0;
        };
    }
}
