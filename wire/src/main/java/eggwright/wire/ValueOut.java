package eggwright.wire;

import java.io.DataOutputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;

/** Numbers and texts on their way out. A text that came before is a number. */
record ValueOut(DataOutputStream out, Map<String, Integer> before) {
    ValueOut(DataOutputStream out) {
        this(out, new HashMap<>());
    }

    /** Seven bits a byte, the lowest first: most numbers here are small. */
    void number(long value) throws IOException {
        long rest = (value << 1) ^ (value >> 63);
        while ((rest & ~0x7FL) != 0) {
            out.writeByte((int) ((rest & 0x7F) | 0x80));
            rest >>>= 7;
        }
        out.writeByte((int) rest);
    }

    void text(String text) throws IOException {
        var known = before.putIfAbsent(text, before.size());
        if (known != null) {
            number(known);
        } else {
            number(-1);
            out.writeUTF(text);
        }
    }
}
