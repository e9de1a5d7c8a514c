package eggwright.wire;

import java.io.DataInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** What {@link ValueOut} wrote. */
record ValueIn(DataInputStream in, List<String> before) {
    ValueIn(DataInputStream in) {
        this(in, new ArrayList<>());
    }

    long number() throws IOException {
        long rest = 0;
        int shift = 0;
        while (true) {
            int next = in.readUnsignedByte();
            rest |= (long) (next & 0x7F) << shift;
            if ((next & 0x80) == 0) {
                return (rest >>> 1) ^ -(rest & 1);
            }
            shift += 7;
        }
    }

    int count() throws IOException {
        return Math.toIntExact(number());
    }

    String text() throws IOException {
        int known = count();
        if (known >= 0) {
            return before.get(known);
        }
        var text = in.readUTF();
        before.add(text);
        return text;
    }
}
