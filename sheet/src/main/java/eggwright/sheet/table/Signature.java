package eggwright.sheet.table;

/** What the first bytes of a file say it is. */
enum Signature {
    ZIP,
    OLD_OFFICE,
    UTF_16,
    OTHER;

    static Signature of(byte[] bytes) {
        if (begins(bytes, 'P', 'K', 3, 4) || begins(bytes, 'P', 'K', 5, 6)) {
            return ZIP;
        }
        if (begins(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
            return OLD_OFFICE;
        }
        if (begins(bytes, 0xFF, 0xFE) || begins(bytes, 0xFE, 0xFF)) {
            return UTF_16;
        }
        return OTHER;
    }

    private static boolean begins(byte[] bytes, int... with) {
        if (bytes.length < with.length) {
            return false;
        }
        for (int i = 0; i < with.length; i++) {
            if ((bytes[i] & 0xFF) != with[i]) {
                return false;
            }
        }
        return true;
    }
}
