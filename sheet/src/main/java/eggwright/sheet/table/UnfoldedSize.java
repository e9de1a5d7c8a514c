package eggwright.sheet.table;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.zip.ZipInputStream;

/** Whether a workbook unfolds to a size that can be held. A small file can unfold into a very large one. */
enum UnfoldedSize {
    FITTING,
    TOO_LARGE;

    /** Cell names have at most three letters (XFD); a longer one would make the reader lay out millions of cells. */
    private static final int MOST_LETTERS = 3;

    /** Throws an {@link IOException} where the archive is damaged, or names cells that no sheet has. */
    static UnfoldedSize of(byte[] bytes, long most) throws IOException {
        long all = 0;
        var buffer = new byte[1 << 16];
        try (var zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                var sheet = entry.getName().contains("sheet") && entry.getName().endsWith(".xml");
                int state = 0;
                for (int n = zip.read(buffer); n > 0; n = zip.read(buffer)) {
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
        return FITTING;
    }

    /** Looks for {@code r="ABCD}; the state is how much of it has been seen. */
    private static int scan(byte[] buffer, int n, int from) throws IOException {
        int state = from;
        for (int i = 0; i < n; i++) {
            int c = buffer[i];
            if (state >= 3 && ((c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'))) {
                if (++state > 3 + MOST_LETTERS) {
                    throw new IOException("a cell whose name has more than " + MOST_LETTERS + " letters");
                }
            } else {
                state = c == 'r' ? 1 : (state == 1 && c == '=') ? 2 : state == 2 && (c == '"' || c == '\'') ? 3 : 0;
            }
        }
        return state;
    }
}
